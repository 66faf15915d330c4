/** The questions of the device check that are answered by ear and by hand. */
import { element } from "../live/element";
import { say } from "../live/words";
import type { Asking } from "./ask";
import { answers, button, speech } from "./parts";
import { allHeard, type Heard, randomSides } from "./sides";

/** Sound, and whether left is left: three tones in random order, and after each the side is asked. */
export function askSound({ device, tones }: Asking, next: () => void): HTMLElement[] {
  const text = element("p", { role: "status" }, say("check_sound_text"));
  const choice = answers();
  const show = (words: string, ...buttons: HTMLElement[]) => {
    text.textContent = say(words);
    choice.replaceChildren(...buttons);
  };
  const done = (sound: boolean, sides: boolean | null) => () => {
    tones.cut();
    device.learn({ sound, sides });
    next();
  };
  const skip = button("skip", done(false, null));
  const open = () => tones.open().then(play, () => show("check_sound_failed", button("check_next", done(false, null), "main")));
  const play = () => {
    const played = randomSides(Math.random);
    const heard: Heard[] = [];
    const sound = () => tones.test(played[heard.length] ?? "left");
    const answer = (side: Heard) => () => {
      heard.push(side);
      if (heard.length < played.length) sound();
      else if (allHeard(played, heard)) done(true, true)();
      else show("check_sound_mixed", button("check_sound_retry", play, "main"), button("check_next", done(true, false)));
    };
    show(
      "check_sound_asked",
      button("check_sound_left", answer("left")),
      button("check_sound_right", answer("right")),
      button("check_sound_both", answer(null), "choice"),
      button("check_sound_again", sound),
      button("check_sound_none", () => show("check_sound_silent", button("check_sound_retry", play, "main"), button("check_next", done(false, null)))),
    );
    sound();
  };
  show(
    "check_sound_text",
    button("check_sound_go", () => void open(), "main"),
    skip,
  );
  return [...speech("check_sound_heading"), text, choice];
}

/** Whether a buzz can be felt: browsers say yes where there is no motor. */
export function askBuzz({ device, buzz }: Asking, next: () => void): HTMLElement[] {
  const text = element("p", { role: "status" }, say("check_buzz_text"));
  const answered = (vibration: boolean) => () => {
    device.learn({ vibration });
    next();
  };
  const choice = answers();
  const play = () => {
    buzz.test("left");
    text.textContent = say("check_buzz_asked");
    choice.replaceChildren(
      button("check_buzz_yes", answered(true), "main"),
      button("check_buzz_no", answered(false)),
      button("check_buzz_again", () => buzz.test("left")),
    );
  };
  choice.append(button("check_buzz_go", play, "main"), button("skip", answered(false)));
  return [...speech("check_buzz_heading"), text, choice];
}
