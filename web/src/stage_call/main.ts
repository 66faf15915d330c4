/** Picture and voice on the client's page: a script of its own, which comes beside the page's. What goes wrong in it leaves the rest as it is. */
import { Call, type CallPage } from "../call/call";
import { joined } from "../call/devices";
import { element, text } from "../live/element";
import { say } from "../live/words";
import type { During } from "../wire/During";
import type { ToCaller } from "../wire/ToCaller";
import { askCall } from "./ask";
import { sentencesFor } from "./sentence";
import { Settings } from "./settings";

/** What the page gives it. */
export interface StagePage extends Pick<CallPage, "send" | "runs"> {
  /** Where the picture stands: between Help and Leave. */
  readonly panel: HTMLElement;
  /** Where what is seldom needed stands: in Help. */
  readonly more: HTMLElement;
  /** Where it says how things are: above Stop. */
  readonly said: HTMLElement;
  /** The tones go to this output too. */
  sendTonesTo(output: string): void;
  /** Which ear hears which tone is not known any more: another output, or a headset whose microphone was opened. */
  unsureOfSides(): void;
}

/** See the head of this file. */
export class StageCall {
  private readonly call: Call;
  private readonly settings: Settings;
  private readonly theirs = element("video", { autoplay: true, playsinline: true, "aria-label": say("call_their_picture") });
  private readonly mute = element("button", { type: "button", onclick: () => this.call.own.mute(!this.call.own.muted) }, say("call_mute"));
  private readonly listen = element("button", { type: "button", hidden: true, onclick: () => void this.play() }, say("call_listen"));
  /** The client's own choice of how the other's picture is shown during a set. */
  private chosen: During | undefined;
  private begun = false;

  constructor(private readonly page: StagePage) {
    this.call = new Call({ send: page.send, runs: page.runs, changed: () => this.draw() });
    this.settings = new Settings(page, this.call, this.theirs, (during) => {
      this.chosen = during;
      this.draw();
    });
    page.panel.append(this.theirs, this.mute, this.listen);
  }

  /** The question of the check: which of the two, and whether they work. */
  ask(next: () => void): HTMLElement[] {
    return askCall(this.call, next);
  }

  /** What the room says about the call. */
  hear(said: ToCaller): void {
    if (said.kind === "begin") this.begun = true;
    this.call.hear(said);
  }

  /** The meeting is over for this page: camera and microphone are let go of. */
  end(): void {
    this.call.end();
    for (const part of [this.page.panel, this.page.more, this.page.said]) part.replaceChildren();
  }

  private async play(): Promise<void> {
    try {
      await this.theirs.play();
      this.listen.hidden = true;
    } catch {
      // The browser wants a tap first: the button is one.
      this.listen.hidden = false;
    }
  }

  private draw(): void {
    const { call } = this;
    if (!this.begun) return this.settings.draw();
    // The field changes its size once, and in no running set: that would end it.
    if (!this.page.runs()) document.body.dataset["calling"] = "";
    document.body.dataset["during"] = call.during;
    if (this.theirs.srcObject !== call.stream) this.theirs.srcObject = call.stream;
    if (this.theirs.paused && call.stream.getTracks().length > 0) void this.play();
    this.theirs.classList.toggle("dark", !joined(call.other?.picture));
    const muted = call.own.muted;
    text(this.mute, say(muted ? "call_unmute" : "call_mute"));
    this.mute.setAttribute("aria-pressed", String(muted));
    this.mute.hidden = call.own.voice === null;
    const wanted = this.chosen ?? call.other?.during;
    if (wanted !== undefined && wanted !== call.during) call.show(wanted);
    const words = sentencesFor(call, call.givesUp);
    text(this.page.said, words.map((id) => say(id)).join(" "));
    this.settings.draw();
  }
}
