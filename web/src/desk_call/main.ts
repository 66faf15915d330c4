// Picture and voice at the desk: the client's face large, what is seen and heard in words, and what a poor line does. A script of its own.
import { Call, type CallPage } from "../call/call";
import { choosesOutput, deviceOf, devices, joined, outputOf, sendSoundTo } from "../call/devices";
import { attribute, make, shown, text } from "../desk/dom";
import type { Action } from "../desk/model";
import type { DeskView } from "../wire/DeskView";
import type { During } from "../wire/During";
import type { Missing } from "../wire/Missing";
import type { ToCaller } from "../wire/ToCaller";
import type { Unwatched } from "../wire/Unwatched";
import { button, choice, type Ways, ways } from "./parts";
import { callLine, screenLine, voiceWord, watchLine } from "./words";

/** What the desk gives it. */
export interface DeskPage extends Pick<CallPage, "send" | "runs"> {
  view(): DeskView | null;
  act(action: Action): void;
}

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
  private readonly during: Ways;
  private readonly watching: Ways;
  private readonly found = make("div", "");
  private readonly more = make("details", "");
  private readonly screenAgain = make("p", "", { class: "call-screen-again" });
  /** Whether the picture is sent when a call begins: as the clinician turned it last. */
  private wantsPicture = true;
  private sends = false;
  /** The call is with this desk, by its last view. */
  private leads = false;
  /** The session is over, or this desk was sent away: nothing is opened any more. */
  private over = false;
  /** Since when a set runs, page time, ms. */
  private runsSince: number | undefined;
  private silent = false;
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
    this.during = ways("Your picture at the client\u2019s while a set runs", DURING, (value) => this.call.show(value as During));
    this.watching = ways("When nothing comes of the client", WATCHING, (value) => page.act({ kind: "watch", off: value === "" ? null : (value as Unwatched) }));
    face.addEventListener("click", () => {
      if (this.silent) void this.play();
    });
    face.append(this.theirs, this.self, this.line, this.told, this.screen, this.row());
    navigator.mediaDevices?.addEventListener("devicechange", () => void this.offer());
    this.draw();
  }

  /** What the room says about the call. */
  hear(said: ToCaller): void {
    // Whoever lets somebody in wants to be seen and heard; what they turned off themselves stays off.
    if (said.kind === "begin" && !this.sends && !this.over) {
      this.sends = true;
      void this.call.own.open({ picture: this.wantsPicture, voice: true });
    }
    this.call.hear(said);
  }

  /** The own microphone, off or on. */
  mute(): void {
    if (!this.leads) return;
    const { own } = this.call;
    if (own.voice === null && !own.opensVoice) void own.open({ picture: false, voice: true });
    else own.mute(!own.muted);
  }

  /** This desk has nobody to see or hear any more: camera and microphone are let go of, and stay so. */
  end(): void {
    this.over = true;
    this.letGo();
  }

  private letGo(): void {
    this.sends = this.leads = false;
    this.call.end();
  }

  draw(): void {
    const { call } = this;
    const view = this.page.view();
    const leads = !this.over && view?.in_control === true && view.state !== "left" && view.state !== "closed";
    if (this.leads && !leads) this.letGo();
    this.leads = leads;
    if (this.theirs.srcObject !== call.stream) this.theirs.srcObject = call.stream;
    if (this.theirs.paused && !this.silent && call.stream.getTracks().length > 0) void this.play();
    const missing = call.missing();
    const admitted = view !== null && !OUTSIDE.includes(view.state);
    const { state, sends, other } = call;
    const standing = { state, admitted, closed: view?.state === "closed", leads: view?.in_control === true, silent: this.silent, givesUp: call.givesUp };
    const { words, urgent } = callLine({ ...standing, sends, other, missing });
    text(this.line, words);
    text(this.told, words.replace(/ for \d+ s/g, ""));
    attribute(this.face, "data-urgent", urgent ? "yes" : null);
    for (const place of [this.screen, this.screenAgain]) text(place, view === null ? "" : screenLine(view.device, other));
    this.theirs.classList.toggle("dark", !joined(other?.picture) || missing.picture !== undefined);
    this.clearForSet();
    this.drawOwn();
    if (view !== null) this.follow(view, missing);
  }

  private drawOwn(): void {
    const { own } = this.call;
    text(this.mutes.firstElementChild ?? this.mutes, voiceWord(this.call.state, this.call.sends));
    attribute(this.mutes, "aria-pressed", String(own.muted && own.voice !== null));
    text(this.picture.firstElementChild ?? this.picture, own.picture === null ? "turn camera on" : "turn camera off");
    this.during.show(this.call.during);
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
    this.watching.show(watch.off ?? "");
    const now = performance.now();
    this.runsSince = this.page.runs() ? (this.runsSince ?? now) : undefined;
    // A picture that was held back for a poor line comes as the set begins: what it may miss is counted from there.
    const counted = now - (this.runsSince ?? now);
    const gone = (["picture", "voice"] as const).find((one) => Math.min(missing[one] ?? 0, counted) >= watch.seconds * 1000);
    if (gone === undefined) this.asked = undefined;
    else if (watch.off === null && inControl && this.asked === undefined) {
      this.asked = gone;
      this.page.act({ kind: "unseen", missing: gone });
    }
  }

  /** What opens over the desk closes as a set starts: in a narrow window it lies over STOP, and is not offered there until the set is over. */
  private clearForSet(): void {
    const runs = this.page.runs();
    if (runs && this.face.dataset["runs"] === undefined) this.more.open = false;
    attribute(this.face, "data-runs", runs ? "yes" : null);
  }

  private turnPicture(): void {
    if (!this.leads) return;
    const { own } = this.call;
    this.wantsPicture = own.picture === null;
    if (this.wantsPicture) void own.open({ picture: true, voice: false });
    else own.hide();
  }

  private row(): HTMLElement {
    const inside = make("div", "");
    inside.append(this.screenAgain, this.watch, this.watching.place, this.picture, this.during.place, this.found);
    this.more.append(make("summary", "More"), inside);
    const row = make("div", "", { class: "call-row" });
    this.mutes.append(make("kbd", "⇧m"));
    row.append(this.mutes, this.more);
    return row;
  }

  /** A browser that wants a click first gets it at the face; anything else it says is tried again. */
  private async play(): Promise<void> {
    try {
      await this.theirs.play();
      this.silent = false;
    } catch (fault) {
      this.silent = fault instanceof DOMException && fault.name === "NotAllowedError";
    }
  }

  /** The devices there are, once the browser tells their names. */
  private async offer(): Promise<void> {
    const all = await devices();
    const { own } = this.call;
    const offered = (words: string, list: readonly MediaDeviceInfo[], now: string | undefined, choose: (id: string) => void) => {
      const options = list.map((device) => [device.deviceId, device.label] as const);
      return list.length < 2 ? [] : [choice(words, options, now, choose)];
    };
    const speaker = (id: string) => void sendSoundTo(this.theirs, id).then(() => this.offer());
    this.found.replaceChildren(
      ...(own.picture ? offered("Camera", all.videoinput, deviceOf(own.picture), (id) => void own.change("picture", id)) : []),
      ...(own.voice ? offered("Microphone", all.audioinput, deviceOf(own.voice), (id) => void own.change("voice", id)) : []),
      ...(choosesOutput() ? offered("Speaker", all.audiooutput, outputOf(this.theirs), speaker) : []),
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
