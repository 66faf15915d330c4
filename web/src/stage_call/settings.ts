/** What the client may change about the call at any time, in Help. */
import type { Call } from "../call/call";
import { choosesOutputOfTones, deviceOf, devices, outputOf, sendSoundTo } from "../call/devices";
import { element, text } from "../live/element";
import { say } from "../live/words";
import type { During } from "../wire/During";
import { chooser } from "./chooser";
import type { StagePage } from "./main";

const DURING: readonly During[] = ["shown", "dimmed", "hidden"];

/** See the head of this file. */
export class Settings {
  private readonly picture = element("button", { type: "button", onclick: () => this.turnPicture() });
  private readonly voice = element("button", { type: "button", onclick: () => this.turnVoice() }, say("call_turn_voice_on"));
  private readonly self = element("button", { type: "button", onclick: () => this.turnSelf() });
  private readonly preview = element("video", { class: "self", autoplay: true, playsinline: true, hidden: true, "aria-label": say("call_self") });
  private readonly during = element("select", { id: "call_during" }, ...DURING.map((one) => element("option", { value: one }, say(`call_during_${one}`))));
  private readonly choosers = element("div", { class: "choosers" });
  private devicesKnown = "";

  /** @param onDuring the client has chosen how the other's picture is shown during a set. */
  constructor(
    private readonly page: Pick<StagePage, "more" | "sendTonesTo" | "unsureOfSides">,
    private readonly call: Call,
    private readonly theirs: HTMLVideoElement,
    onDuring: (during: During) => void,
  ) {
    this.preview.muted = true;
    this.during.addEventListener("change", () => onDuring(this.during.value as During));
    const label = element("label", { for: "call_during" }, say("call_during"));
    page.more.append(element("h2", {}, say("call_settings")), this.picture, this.voice, this.self, this.preview, label, this.during, this.choosers);
    navigator.mediaDevices?.addEventListener("devicechange", () => void this.offer());
    this.draw();
  }

  /** Says what stands. */
  draw(): void {
    const { own } = this.call;
    text(this.picture, say(own.picture ? "call_turn_picture_off" : "call_turn_picture_on"));
    this.voice.hidden = own.voice !== null;
    this.self.hidden = own.picture === null;
    if (own.picture === null) this.show(false);
    text(this.self, say(this.preview.hidden ? "call_self_show" : "call_self_hide"));
    if (this.during.value !== this.call.during) this.during.value = this.call.during;
    const known = `${own.picture?.id} ${own.voice?.id}`;
    if (known !== this.devicesKnown) {
      this.devicesKnown = known;
      void this.offer();
    }
  }

  private turnPicture(): void {
    if (this.call.own.picture) this.call.own.hide();
    else void this.call.own.open({ picture: true, voice: false });
  }

  private turnVoice(): void {
    this.page.unsureOfSides();
    void this.call.own.open({ picture: false, voice: true });
  }

  private turnSelf(): void {
    this.show(this.preview.hidden);
    this.draw();
  }

  private show(on: boolean): void {
    if (on !== this.preview.hidden) return;
    const { picture } = this.call.own;
    this.preview.hidden = !on;
    this.preview.srcObject = on && picture ? new MediaStream([picture]) : null;
  }

  /** The devices there are, once the browser tells their names. */
  private async offer(): Promise<void> {
    const found = await devices();
    const { own } = this.call;
    const microphone = (id: string) => {
      this.page.unsureOfSides();
      void own.change("voice", id);
    };
    const speaker = (id: string) => {
      this.page.unsureOfSides();
      this.page.sendTonesTo(id);
      void sendSoundTo(this.theirs, id).then(() => this.offer());
    };
    this.choosers.replaceChildren(
      ...(own.picture ? chooser("call_camera", found.videoinput, deviceOf(own.picture), (id) => void own.change("picture", id)) : []),
      ...(own.voice ? chooser("call_microphone", found.audioinput, deviceOf(own.voice), microphone) : []),
      ...(choosesOutputOfTones() ? chooser("call_speaker", found.audiooutput, outputOf(this.theirs), speaker) : []),
    );
  }
}
