/** The question of the check about picture and voice: what to send, and whether it works. The own picture is seen here, and nowhere else unasked. */
import type { Call } from "../call/call";
import { deviceOf, devices } from "../call/devices";
import { element } from "../live/element";
import { say } from "../live/words";
import { answers, button, speech } from "../stage/parts";
import { chooser } from "./chooser";
import { Level } from "./level";

/** Its page; `next`: it was answered. */
export function askCall(call: Call, next: () => void): HTMLElement[] {
  const text = element("p", { role: "status" }, say("call_text"));
  const preview = element("video", { class: "self", autoplay: true, playsinline: true, hidden: true, "aria-label": say("call_self") });
  preview.muted = true;
  const level = new Level();
  const choosers = element("div", { class: "choosers" });
  const choice = answers();
  const done = () => {
    level.end();
    preview.srcObject = null;
    next();
  };
  const asking = async (picture: boolean, act: () => Promise<void>) => {
    text.textContent = say("call_asked");
    choice.replaceChildren();
    await act();
    await opened(picture);
  };
  const open = (picture: boolean) => {
    // A camera of an answer before this one is not wanted any more.
    if (!picture) call.own.hide();
    return asking(picture, () => call.own.open({ picture, voice: true }));
  };
  const opened = async (picture: boolean) => {
    const { own } = call;
    const faults = [
      own.standing.voice === "on" ? [] : [`call_voice_${own.standing.voice}`],
      !picture || own.standing.picture === "on" ? [] : [`call_picture_${own.standing.picture}`],
    ];
    const said = faults.flat();
    preview.hidden = own.picture === null;
    preview.srcObject = own.picture && new MediaStream([own.picture]);
    level.follow(own.voice);
    const well = own.picture ? "call_look" : "call_speak";
    text.textContent = (said.length > 0 ? said : [well, "call_ears"]).map((id) => say(id)).join(" ");
    const found = await devices();
    choosers.replaceChildren(
      ...(own.picture ? chooser("call_camera", found.videoinput, deviceOf(own.picture), (id) => void asking(picture, () => own.change("picture", id))) : []),
      ...(own.voice ? chooser("call_microphone", found.audioinput, deviceOf(own.voice), (id) => void asking(picture, () => own.change("voice", id))) : []),
    );
    const again = button("call_again", () => void open(picture), "main");
    choice.replaceChildren(...(said.length > 0 ? [again, button("call_without", done)] : [button("call_go", done, "main")]));
  };
  choice.append(
    button("call_both", () => void open(true), "main"),
    button("call_voice_only", () => void open(false)),
    button("call_neither", () => {
      call.own.hush();
      done();
    }),
  );
  return [...speech("call_heading"), text, preview, level.bar, choice, choosers];
}
