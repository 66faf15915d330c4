/**
 * One page's half of the call: its own camera and microphone, the connection, and what came of the other. The desk and the client's page draw it, each
 * in its own way. Nothing of it is kept anywhere.
 */
import type { During } from "../wire/During";
import type { FromCaller } from "../wire/FromCaller";
import type { Missing } from "../wire/Missing";
import type { Sends } from "../wire/Sends";
import type { ToCaller } from "../wire/ToCaller";
import { Connection, type CallState } from "./connection";
import { Line, sendingIn } from "./line";
import { OwnMedia } from "./own";
import { countedIn, Seen } from "./seen";

/** A connection that is not there, or not there again, after this time is said to be none, ms. */
const UNREACHED_AFTER = 15_000;
/** How often the browser's figures are read, ms. */
const LOOK = 250;
/** What this page sends is said again after this time, ms: the room may have left it out. */
const SAY_AGAIN = 5_000;

/** What a page tells its call, and hears from it. */
export interface CallPage {
  /** Sends to the room, now or not at all. */
  send(said: FromCaller): void;
  /** A set runs. */
  runs(): boolean;
  /** Something changed that is drawn. */
  changed(): void;
}

/** See the head of this file. */
export class Call {
  /** What this page sends. */
  readonly own: OwnMedia;
  /** What the other says that they send; undefined: nothing was said in this call. */
  other: Sends | undefined;
  /** The other's picture and voice, for one element that plays both. */
  readonly stream = new MediaStream();
  /** How the clinician's picture is shown while a set runs. */
  during: During = "dimmed";

  private readonly seen = new Seen();
  private line = new Line();
  private readonly connection: Connection;
  private told = "";
  private toldAt = 0;
  private ran = false;

  constructor(private readonly page: CallPage) {
    this.own = new OwnMedia(navigator.mediaDevices, () => this.ownChanged());
    this.connection = new Connection({
      send: (said) => page.send(said),
      own: () => ({ picture: this.line.spares ? null : this.own.picture, voice: this.own.voice }),
      onSends: (sends) => {
        this.other = sends;
        page.changed();
      },
      onTrack: (track) => this.play(track),
      onState: () => page.changed(),
      make: (config) => new RTCPeerConnection(config),
    });
    setInterval(() => void this.look(), LOOK);
    document.addEventListener("visibilitychange", () => this.tell());
    // Another network: what still comes goes on until there is a new way.
    addEventListener("online", () => this.connection.restart());
  }

  /** How the connection stands. */
  get state(): CallState {
    return this.connection.state;
  }

  /** It stands as it does for so long that it is said not to get through, though it is still tried. */
  get givesUp(): boolean {
    return performance.now() - this.connection.since > UNREACHED_AFTER;
  }

  /** What this page sends, as it tells the other. */
  get sends(): Sends {
    const { picture, voice } = this.own.standing;
    return {
      picture: picture === "on" && this.line.spares ? "spared" : picture,
      voice: voice === "on" && this.own.muted ? "muted" : voice,
      during: this.during,
      visible: document.visibilityState === "visible",
    };
  }

  /** For how long nothing came of the other that should, ms. */
  missing(): Readonly<Record<Missing, number | undefined>> {
    return this.seen.missing(performance.now());
  }

  /** Takes in what the room says about the call. */
  hear(said: ToCaller): void {
    if (said.kind === "begin" || said.kind === "over") {
      this.seen.anew(this.page.runs());
      this.line = new Line();
      this.other = undefined;
      this.told = "";
      for (const track of this.stream.getTracks()) this.stream.removeTrack(track);
    }
    this.connection.hear(said);
    this.tell();
    this.page.changed();
  }

  /** Shows the clinician's picture so while a set runs. */
  show(during: During): void {
    this.during = during;
    this.tell();
    this.page.changed();
  }

  /** There is nobody to send to any more: camera and microphone are let go of. */
  end(): void {
    this.connection.end();
    this.own.close();
  }

  private ownChanged(): void {
    void this.connection.sendOwn();
    this.tell();
    this.page.changed();
  }

  /** Tells the other what this page sends, when that is news. */
  private tell(): void {
    const news = JSON.stringify(this.sends);
    const now = performance.now();
    if ((news === this.told && now - this.toldAt < SAY_AGAIN) || this.state === "none") return;
    [this.told, this.toldAt] = [news, now];
    this.connection.say(this.sends);
  }

  /** While a set runs the picture is what it runs by: it is sent then, however poor the line, which is judged anew after it. */
  private turn(runs: boolean): void {
    if (runs === this.ran) return;
    this.ran = runs;
    if (!this.line.spares) return;
    this.line = new Line();
    this.ownChanged();
  }

  private play(track: MediaStreamTrack): void {
    for (const before of this.stream.getTracks()) if (before.kind === track.kind && before !== track) this.stream.removeTrack(before);
    this.stream.addTrack(track);
    this.page.changed();
  }

  private async look(): Promise<void> {
    this.turn(this.page.runs());
    this.tell();
    const report = await this.connection.stats();
    if (!report) return;
    const entries = [...report.values()] as unknown[];
    const now = performance.now();
    const sent = (device: Sends["picture"] | undefined) => device === "on" || device === "muted" || device === "spared";
    this.seen.count(countedIn(entries), { picture: sent(this.other?.picture), voice: sent(this.other?.voice) }, this.page.runs(), now);
    const judged = this.own.picture !== null && !this.page.runs();
    if (judged && this.line.judge(sendingIn(entries), now)) this.ownChanged();
    this.page.changed();
  }
}
