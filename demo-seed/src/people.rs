//! Invented people of an invented town. None of these names, numbers or places belongs to anybody:
//! the telephone numbers are of ranges that the United Kingdom's regulator keeps free for fiction.

/// The practice.
pub const PRACTICE: &str = "Tern Street Practice (demo)";

/// Its time zone.
pub const ZONE: &str = "Europe/London";

/// The emergency number where its clients sit.
pub const EMERGENCY: &str = "999";

/// What it says about reading, and whom its clients can call. The number is of a range that is kept free for fiction.
pub const READING_HOURS: &str = "On weekdays, from nine to five.";
pub const CRISIS_WORDS: &str =
    "The practice\u{2019}s night line: 020 7946 0123. It is open from five in the evening to nine in the morning.";

/// Its clinicians.
pub const CLINICIANS: [&str; 7] =
    ["Maren Oldacre", "Idris Fennimore", "Tove Quillfeather", "Joaquim Sallow", "Perpetua Dray", "Anselm Whitlock", "Yewande Marsh"];

/// Reads the outcomes.
pub const LEAD: &str = "Cornelia Vane";

/// Invites and releases members.
pub const ADMINISTRATOR: &str = "Bartholomew Kyte";

/// First names of clients.
pub const FIRST: [&str; 32] = [
    "Alder", "Bree", "Caspian", "Dilys", "Ebba", "Finlo", "Greer", "Halvard", "Isolde", "Jory", "Keziah", "Lowen", "Mabyn", "Nerys",
    "Osric", "Petroc", "Quilla", "Rowena", "Sorrel", "Tamsin", "Ulric", "Verity", "Wren", "Xanthe", "Yarrow", "Zennor", "Ailith", "Birch",
    "Cerys", "Demelza", "Emrys", "Fenella",
];

/// Family names of clients and contacts.
pub const FAMILY: [&str; 30] = [
    "Ashgrove",
    "Bellwether",
    "Copperthwaite",
    "Dunmore-Pike",
    "Eastlake",
    "Farthingdale",
    "Goldfinch",
    "Hawkesmoor",
    "Ivory",
    "Jessamine",
    "Kestrel",
    "Larkspur",
    "Merrivale",
    "Nightjar",
    "Oakhanger",
    "Pennywell",
    "Quickthorn",
    "Ravenscar",
    "Saltmarsh",
    "Thistlewood",
    "Underhill",
    "Vervain",
    "Winterbourne",
    "Yellowhammer",
    "Applegarth",
    "Brackenbury",
    "Coldwater",
    "Driftwood",
    "Elderflower",
    "Foxglove",
];

/// Streets of the invented town.
pub const STREETS: [&str; 16] = [
    "Limpet Row",
    "Kelp Lane",
    "Beacon Hill",
    "Cockle Street",
    "Ropewalk",
    "Old Slipway",
    "Gannet Close",
    "Harbour View",
    "Tide Terrace",
    "Saltpan Road",
    "Lantern Court",
    "Mariner's Rise",
    "Pebble Walk",
    "Cutter Mews",
    "Anchor Yard",
    "Sandpiper Way",
];

/// A memory somebody might bring, told so that it could be anybody's.
pub struct Memory {
    /// Gives nothing away.
    pub label: &'static str,
    /// Worst picture.
    pub picture: &'static str,
    /// The belief that goes with it.
    pub negative: &'static str,
    /// The one wanted instead.
    pub positive: &'static str,
    /// Emotions.
    pub emotions: &'static str,
    /// Place in the body.
    pub body: &'static str,
}

const fn memory(
    label: &'static str,
    picture: &'static str,
    negative: &'static str,
    positive: &'static str,
    emotions: &'static str,
    body: &'static str,
) -> Memory {
    Memory { label, picture, negative, positive, emotions, body }
}

/// What the invented clients work on.
pub const MEMORIES: [Memory; 16] = [
    memory(
        "Blue door",
        "the hallway light going out and the handle turning",
        "I am not safe anywhere",
        "I can keep myself safe now",
        "fear",
        "throat and shoulders",
    ),
    memory(
        "Wet leaves",
        "headlights sliding towards the windscreen",
        "I should have seen it coming",
        "I did what anyone could",
        "guilt, fear",
        "stomach",
    ),
    memory("Third floor", "the corridor and the trolley's wheels", "I am helpless", "I have some say now", "dread", "chest"),
    memory("The whistle", "the coach's face close to mine", "I am worthless", "I am all right as I am", "shame", "face, hot"),
    memory("Low tide", "my brother's hat on the sand", "I let him down", "I loved him as well as I could", "grief", "behind the eyes"),
    memory(
        "Green coat",
        "her back as she walked off the platform",
        "I am easily left",
        "I can be close to people",
        "sadness",
        "chest, hollow",
    ),
    memory("Tuesday meeting", "everybody looking up from the table", "I cannot speak", "I can say what I need to", "shame, anger", "jaw"),
    memory("The stairs", "the banister coming away in my hand", "I am going to die", "It is over and I am alive", "terror", "legs"),
    memory(
        "Kennel lane",
        "the dog's teeth in the gap of the gate",
        "I am in danger",
        "I can move about freely",
        "fear",
        "hands and calves",
    ),
    memory(
        "Kitchen radio",
        "the plate on the wall and then the silence",
        "It was my fault",
        "I was a child; it was not mine to stop",
        "guilt",
        "stomach, tight",
    ),
    memory("Night shift", "the monitor's flat line", "I failed", "I did my work with care", "guilt, grief", "arms, heavy"),
    memory("The ferry", "water over the car deck", "I have no control", "I can choose what I do next", "panic", "chest"),
    memory("Long letter", "the last line of it", "I am not good enough", "I am enough", "shame", "stomach"),
    memory("Orange vest", "the ladder in the air", "I must never rest", "I may rest now", "dread", "neck"),
    memory("Paper mask", "the ceiling tiles above the bed", "I cannot bear it", "I can bear it, and it passes", "fear", "throat"),
    memory("Red folder", "the manager closing the blinds", "I cannot trust anyone", "I can choose whom to trust", "anger", "fists"),
];

/// A safety plan, part by part, one matter a line.
pub const STAYING_SAFE: [&str; 6] = [
    "Not answering the telephone for two days\nSleeping in my clothes",
    "Cold water on my wrists\nWalking to the slipway and back\nThe song list on my phone",
    "My neighbour, any evening\nMy sister, after her shift",
    "The library's reading room\nThe bench by the slipway",
    "The practice, weekdays nine to six\nThe night line of the town when nobody answers",
    "Tablets are with my sister, who brings a week's worth",
];

/// What shows that it is too much, what brought them back, what to say first.
pub const STEADYING: [&str; 3] = [
    "Looks past the screen, answers in single words, left hand closes",
    "Feet on the floor, naming what is on the desk, a sip of water",
    "The name first, then: what can you see beside you?",
];

/// Resources: cue word, picture, where it is felt, whether it has helped.
pub const STEADIED_BY: [(&str, &str, &str, &str); 3] = [
    ("Slipway", "Sitting on the warm stones, the tide far out", "Back and shoulders, heavy and warm", "yes"),
    ("Bread", "The bakery at six, the door just open", "Chest, wide", "yes"),
    ("Lighthouse", "High up, the beam going round", "Nowhere yet", "not_known"),
];

/// What several of a client's targets share.
pub const CLUSTERS: [&str; 6] = ["Nobody came", "It was up to me", "No warning", "In front of everybody", "Shut in", "Left behind"];

/// What a client might say came up, early in the work.
pub const EARLY: [&str; 14] = [
    "the picture is very near",
    "my heart is going",
    "I hear the sound again",
    "the same, only sharper",
    "heat in my face",
    "I keep seeing the same corner",
    "hands are cold",
    "I want to look away",
    "a smell I had forgotten",
    "angry, suddenly",
    "tears, not sure why",
    "my shoulders are up",
    "somebody was there I had forgotten",
    "nothing for a moment, then back to the start",
];

/// Later on.
pub const LATER: [&str; 14] = [
    "it is further off",
    "like seeing it through glass",
    "a long breath came by itself",
    "my shoulders dropped",
    "I thought of my sister's kitchen",
    "it is more a fact than a film",
    "sad, but it is all right",
    "the colours have gone pale",
    "I could have told somebody",
    "I see how young I was",
    "it is only a room",
    "warm hands",
    "I noticed the rain outside",
    "the sound is just a sound",
];

/// Near the end.
pub const SETTLED: [&str; 8] = [
    "quiet",
    "nothing new",
    "it stays in its place",
    "I feel my feet on the floor",
    "calm, a bit tired",
    "the good thought fits",
    "lighter",
    "I would like to stop here, it is good",
];

/// Endings, as a clinician might note them.
pub const RESOURCES: [&str; 6] = [
    "calm place (the bench by the slipway), helped",
    "container, then slow breathing; helped",
    "calm place with four slow taps; helped a little",
    "light stream in own words; settled",
    "named five things in the room; oriented",
    "calm place; not needed long",
];
