// Picture and voice at the desk: the client's face large, what is seen and heard in words, and what a poor line does. A script of its own.
import { Call, type CallPage } from "../call/call";
import { choosesOutput, devices, joined, sendSoundTo } from "../call/devices";
import { attribute, make, shown, text } from "../desk/dom";
import type { Action } from "../desk/model";
import type { DeskView } from "../wire/DeskView";
import type { During } from "../wire/During";
import type { Missing } from "../wire/Missing";
import type { ToCaller } from "../wire/ToCaller";
import type { Unwatched } from "../wire/Unwatched";
import { button, choice } from "./parts";
import { callLine, screenLine, watchLine } from "./words";

/** What the desk gives it. */
export interface DeskPage extends Pick<CallPage, "send" | "runs"> {
  view(): DeskView | null;
  act(action: Action): void;
}

/** A connection that is not there by then is said to be none, though it is still tried, ms. */
const UNREACHED_AFTER = 15_000;
const OUTSIDE: readonly DeskView["state"][] = ["waiting", "at_the_door", "left", "closed"];

/** See the head of this file. */
export class DeskCall {
  private readonly call: Call;
  private readonly theirs = make("video", "", { autoplay: "", playsinline: "", "aria-label": "The client" });
  private readonly self = make("video", "", { class: "self", autoplay: "", playsinline: "", "aria-label": "Your own picture" });
  private readonly line = make("p", "", { class: "call-line" });
  /** The same for who listens, without the seconds: it is read when it changes. */
  private readonly told = make("p", "", { class: "unseen", role: "status" });
  private readonly screen = make("p", "", { class: "call-screen" });
  private readonly watch = make("p", "");
  private readonly mutes: HTMLButtonElement;
  private readonly picture: HTMLButtonElement;
  private readonly during: HTMLSelectElement;
  private readonly watching: HTMLSelectElement;
  private readonly found = make("div", "");
  private begunAt: number | undefined;
  private asked: Missing | undefined;
  private known = "";

  constructor(
    private readonly face: HTMLElement,
    private readonly page: DeskPage,
  ) {
    this.call = new Call({ send: page.send, runs: page.runs, changed: () => this.draw() });
    this.self.muted = true;
    this.mutes = button("", () => this.mute());
    this.picture = button("", () => this.turnPicture());
    this.during = choice("Your picture at the client's while a set runs", DURING, (value) => this.call.show(value as During));
    this.watching = choice("When nothing comes of the client", WATCHING, (value) =>
      page.act({ kind: "watch", off: value === "" ? null : (value as Unwatched) }),
    );
    face.append(this.theirs, this.self, this.line, this.told, this.screen, this.row());
    navigator.mediaDevices?.addEventListener("devicechange", () => void this.offer());
    this.draw();
  }

  /** What the room says about the call. */
  hear(said: ToCaller): void {
    if (said.kind === "begin") {
      this.begunAt = performance.now();
      // Whoever lets somebody in wants to be seen and heard; what they turned off themselves stays off.
      if (this.call.own.fresh) void this.call.own.open({ picture: true, voice: true });
    }
    this.call.hear(said);
  }

  /** The own microphone, off or on. */
  mute(): void {
    const { own } = this.call;
    if (own.voice === null) void own.open({ picture: false, voice: true });
    else own.mute(!own.muted);
  }

  draw(): void {
    const { call } = this;
    const view = this.page.view();
    if (view?.state === "closed") call.end();
    if (this.theirs.srcObject !== call.stream) this.theirs.srcObject = call.stream;
    if (this.theirs.paused && call.stream.getTracks().length > 0) void this.theirs.play().catch(() => undefined);
    const missing = call.missing();
    const late = this.begunAt !== undefined && performance.now() - this.begunAt > UNREACHED_AFTER;
    const admitted = view !== null && !OUTSIDE.includes(view.state);
    const { words, urgent } = callLine({ state: call.state, admitted, givesUp: late, sends: call.sends, other: call.other, missing });
    text(this.line, words);
    text(this.told, words.replace(/ for \d+ s/g, ""));
    attribute(this.face, "data-urgent", urgent ? "yes" : null);
    text(this.screen, view === null ? "" : screenLine(view.device, call.other));
    this.theirs.classList.toggle("dark", !joined(call.other?.picture) || missing.picture !== undefined);
    this.drawOwn();
    if (view !== null) this.follow(view, missing);
  }

  private drawOwn(): void {
    const { own } = this.call;
    const muted = own.muted && own.voice !== null;
    text(this.mutes.firstElementChild ?? this.mutes, muted ? "MUTED" : own.voice === null ? "microphone off" : "heard");
    attribute(this.mutes, "aria-pressed", String(muted));
    text(this.picture.firstElementChild ?? this.picture, own.picture === null ? "turn camera on" : "turn camera off");
    if (this.during.value !== this.call.during) this.during.value = this.call.during;
    const known = `${own.picture?.id} ${own.voice?.id}`;
    if (known === this.known) return;
    this.known = known;
    this.self.srcObject = own.picture && new MediaStream([own.picture]);
    shown(this.self, own.picture !== null);
    void this.offer();
  }

  /** What the room has agreed, and what a client who is not seen does to a set. */
  private follow({ watch, in_control: inControl }: DeskView, missing: Readonly<Record<Missing, number | undefined>>): void {
    text(this.watch, watchLine(watch));
    if (this.watching.value !== (watch.off ?? "") && document.activeElement !== this.watching) this.watching.value = watch.off ?? "";
    const gone = (["picture", "voice"] as const).find((one) => (missing[one] ?? 0) >= watch.seconds * 1000);
    if (gone === undefined || !this.page.runs()) this.asked = undefined;
    else if (watch.off === null && inControl && this.asked === undefined) {
      this.asked = gone;
      this.page.act({ kind: "unseen", missing: gone });
    }
  }

  private turnPicture(): void {
    if (this.call.own.picture) this.call.own.hide();
    else void this.call.own.open({ picture: true, voice: false });
  }

  private row(): HTMLElement {
    const more = make("details", "");
    const inside = make("div", "");
    inside.append(this.watch, this.labelled(this.watching), this.picture, this.labelled(this.during), this.found);
    more.append(make("summary", "More"), inside);
    const row = make("div", "", { class: "call-row" });
    this.mutes.append(make("kbd", "⇧m"));
    row.append(this.mutes, more);
    return row;
  }

  private labelled(select: HTMLSelectElement): HTMLElement {
    const label = make("label", select.dataset.words ?? "");
    label.append(select);
    return label;
  }

  /** The devices there are, once the browser tells their names. */
  private async offer(): Promise<void> {
    const all = await devices();
    const { own } = this.call;
    const select = (words: string, list: readonly MediaDeviceInfo[], now: MediaStreamTrack | null, choose: (id: string) => void) => {
      if (list.length < 2) return [];
      const made = choice(
        words,
        list.map((device) => [device.deviceId, device.label] as const),
        choose,
      );
      made.value = now?.getSettings().deviceId ?? made.value;
      return [this.labelled(made)];
    };
    this.found.replaceChildren(
      ...(own.picture ? select("Camera", all.videoinput, own.picture, (camera) => void own.open({ picture: true, voice: false, camera })) : []),
      ...(own.voice ? select("Microphone", all.audioinput, own.voice, (microphone) => void own.open({ picture: false, voice: true, microphone })) : []),
      ...(choosesOutput() ? select("Speaker", all.audiooutput, null, (id) => void sendSoundTo(this.theirs, id)) : []),
    );
  }
}

const DURING = [
  ["shown", "as it is"],
  ["dimmed", "darker"],
  ["hidden", "not at all"],
] as const;

const WATCHING = [
  ["", "a set comes to rest"],
  ["sound_only", "it goes on: we work by sound alone"],
  ["other_means", "it goes on: I see and hear them by other means"],
] as const;
