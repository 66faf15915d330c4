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
  const goOn = () => {
    tones.cut();
    next();
  };
  // Known at once, not only when the client goes on: the way past the question takes nothing back.
  const learned = (sound: boolean, sides: boolean | null, words: string, ...retry: HTMLElement[]) => {
    device.learn({ sound, sides });
    show(words, ...retry, button("check_next", goOn, retry.length > 0 ? "" : "main"));
  };
  const again = () => button("check_sound_retry", play, "main");
  const open = () => tones.open().then(play, () => learned(false, null, "check_sound_failed"));
  const play = () => {
    const played = randomSides(Math.random);
    const heard: Heard[] = [];
    const sound = () => tones.test(played[heard.length] ?? "left");
    const answer = (side: Heard) => () => {
      heard.push(side);
      if (heard.length < played.length) return sound();
      if (!allHeard(played, heard)) return learned(true, false, "check_sound_mixed", again());
      device.learn({ sound: true, sides: true });
      goOn();
    };
    show(
      "check_sound_asked",
      button("check_sound_left", answer("left")),
      button("check_sound_right", answer("right")),
      button("check_sound_both", answer(null), "choice"),
      button("check_sound_again", sound),
      button("check_sound_none", () => learned(false, null, "check_sound_silent", again())),
    );
    sound();
  };
  show(
    "check_sound_text",
    button("check_sound_go", () => void open(), "main"),
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
  choice.append(button("check_buzz_go", play, "main"));
  return [...speech("check_buzz_heading"), text, choice];
}
