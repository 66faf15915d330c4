//! The sentences themselves, by id. What each is for stands in its id: the page, then the part.

/// Every sentence a client can see, by id, in the order of the pages.
pub const CLIENT: &[(&str, &str)] = &[
    // On every page
    ("title", "Meeting page"),
    ("leave", "Leave"),
    ("help", "Help"),
    (
        "help_text",
        "Press Stop if anything feels wrong. Press Leave to close this page at once.",
    ),
    ("help_lighter", "Lighter page"),
    ("help_darker", "Darker page"),
    ("stop", "Stop"),
    ("skip", "Skip"),
    (
        "no_script",
        "This page needs JavaScript. Please turn it on, or use another browser.",
    ),
    // Join
    ("join_heading", "Join your meeting"),
    (
        "join_text",
        "Please type the six numbers you were told. Then press Join.",
    ),
    ("join_code", "Six numbers"),
    ("join_button", "Join"),
    (
        "join_next",
        "Next you will check your screen. Then you wait until you are let in.",
    ),
    ("join_busy", "One moment."),
    ("join_short", "Please type all six numbers."),
    (
        "join_no_link",
        "Part of your link is missing. Please open it from your message once more.",
    ),
    (
        "join_wrong",
        "That did not work. Please check the numbers and try again. If it still fails, ask for a new link.",
    ),
    (
        "join_elsewhere",
        "This meeting is open on another device. We have asked the person you are meeting. Wait a little, then press Join again.",
    ),
    (
        "join_slow",
        "There were too many tries. Please wait one minute, then press Join again.",
    ),
    (
        "join_offline",
        "We could not reach the meeting. Check that you are online, then press Join again.",
    ),
    (
        "join_help",
        "The person you are meeting can tell you the numbers. Press Leave to close this page at once.",
    ),
    // Check of the device
    ("check_start_heading", "A short check"),
    (
        "check_start_text",
        "We ask a few things about your screen and sound. You can skip each one. Nothing moves or plays yet.",
    ),
    ("check_start_go", "Start"),
    ("check_start_skip", "Skip all"),
    ("check_card_heading", "The size of your screen"),
    (
        "check_card_text",
        "Hold the short side of a bank card to the box. Move the slider until both are the same width.",
    ),
    ("check_card_slider", "Width of the box"),
    ("check_card_go", "It fits"),
    ("check_distance_heading", "Where you sit"),
    (
        "check_distance_text",
        "How far are your eyes from the screen?",
    ),
    ("check_distance_near", "Close, like a phone in my hand"),
    ("check_distance_arm", "About as long as my arm"),
    ("check_distance_far", "Further away"),
    ("check_motion_heading", "A moving dot"),
    (
        "check_motion_text",
        "Your device asks for less movement. Do you want to see a moving dot?",
    ),
    ("check_motion_yes", "Yes, show the dot"),
    ("check_motion_no", "No moving dot"),
    ("check_sound_heading", "Sound"),
    (
        "check_sound_text",
        "If you want sound, we play two soft tones: first left, then right.",
    ),
    ("check_sound_go", "Play the tones"),
    ("check_sound_asked", "Did you hear the tones?"),
    ("check_sound_yes", "I heard them"),
    ("check_sound_again", "Play again"),
    (
        "check_sound_failed",
        "Sound does not work here. You can go on without it.",
    ),
    ("check_awake_heading", "Your screen"),
    (
        "check_awake_text",
        "May we keep your screen on while you are here?",
    ),
    ("check_awake_go", "Keep it on"),
    (
        "check_awake_refused",
        "Your device did not allow this. Touch the screen now and then to keep it on.",
    ),
    ("check_next", "Go on"),
    ("check_full_heading", "The whole screen"),
    (
        "check_full_text",
        "Should this page fill your screen? There is less around it then.",
    ),
    ("check_full_go", "Fill the screen"),
    // Waiting
    ("connecting_heading", "One moment"),
    ("connecting_text", "We are connecting you."),
    ("waiting_heading", "Please wait"),
    (
        "waiting_text",
        "The person you are meeting can see that you are here. They will let you in.",
    ),
    (
        "waiting_alone_text",
        "The person you are meeting is not here yet. You do not need to do anything.",
    ),
    // Ready
    ("ready_heading", "You are in"),
    (
        "ready_text",
        "When you are both ready, a dot will move. Press anywhere to stop it.",
    ),
    (
        "ready_tones_text",
        "When you are both ready, soft tones will play. Press anywhere to stop them.",
    ),
    (
        "ready_alone_text",
        "The person you are meeting is away for a moment. Nothing will start.",
    ),
    ("between_heading", "The dot rests"),
    (
        "between_text",
        "It will move again when you are both ready. Press anywhere to stop it.",
    ),
    ("running_label", "Press anywhere to stop."),
    // Held
    ("stopped_heading", "Stopped."),
    ("stopped_text", "Nothing will start until you say so."),
    (
        "stopped_told",
        "The person you are meeting can see that you stopped.",
    ),
    (
        "stopped_untold",
        "The person you are meeting may not know yet. We keep trying to tell them.",
    ),
    (
        "declined_text",
        "You chose no moving dot, so nothing moved.",
    ),
    ("declined_show", "Show the dot after all"),
    ("paused_heading", "This page has stopped."),
    (
        "paused_text",
        "It stopped by itself to be safe. You did nothing wrong.",
    ),
    ("paused_wait", "You can rest now."),
    ("ready_button", "I am ready"),
    ("reconnecting", "We are trying to connect again."),
    // Lost, sent away, ended
    ("lost_heading", "The line is down."),
    (
        "lost_text",
        "This page lost its connection and has stopped. You did nothing wrong. If you can still hear each other, keep talking. If not, we will call you.",
    ),
    ("refused_heading", "This page is closed."),
    (
        "refused_text",
        "The meeting is no longer open here. To come back, open your link again.",
    ),
    ("end_heading", "The meeting has ended."),
    ("end_text", "You can close this page now."),
    ("left_text", "You can close this page."),
];
