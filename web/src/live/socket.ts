/**
 * One page's line to the room: connects, says hello, answers beats, and connects again when the
 * line is lost. It never keeps an order for later: what cannot be sent now is not sent.
 */
import type { Beat } from "../wire/Beat";
import type { BeatReply } from "../wire/BeatReply";

/** The wire this page speaks: `leeward_core::wire::WIRE_VERSION`. */
export const WIRE_VERSION = 5;

/**
 * - `connecting`: the first try, or one after a loss, is under way
 * - `open`: connected; hello was sent
 * - `lost`: not connected; the next try is planned
 * - `refused`: the server sent this page away (close code 1008 or 4000 and above); no more tries
 * - `closed`: this page ended it
 */
export type SocketState = "connecting" | "open" | "lost" | "refused" | "closed";

/** What a page tells its line and hears from it. `In` and `Out` are the wire's message types. */
export interface SocketUser<In, Out> {
  /** Path on this host, for example "/stage/socket". */
  readonly path: string;
  /** The first message of each connection. */
  hello(): Out;
  /** The highest `seq` of a view that this page has drawn, 0 at first. Goes out with each answer to a beat. */
  drawn(): number;
  /** Every message, beats included (already answered then). `pageNow` is the page time of its arrival, ms. */
  onMessage(message: In, pageNow: number): void;
  /** Every change of state. `code` is the close code when one came. */
  onState(state: SocketState, code?: number): void;
}

/** Tries to connect again follow after these pauses, ms; the last one is repeated. */
const PAUSES = [250, 500, 1_000, 2_000, 4_000];
/** How often the line is checked for life, ms. */
const CHECK = 500;
/** Without any message for this long the line is taken for dead, ms. The server beats every 5 s at least. */
const PATIENCE = 12_000;

/** The pause before try number `attempt` (0 is the first after a loss), up to a fifth longer by `chance` (0 to 1). */
export const pauseBefore = (attempt: number, chance: number): number => (PAUSES[Math.min(attempt, PAUSES.length - 1)] ?? 0) * (1 + chance / 5);

/** The session has ended (`closing::OVER` of the portal). */
export const OVER = 4000;

/** The page speaks another version of the wire (`Why::Outdated` of the core). */
export const OUTDATED = 4002;

/** The client was handed over to somebody else (`closing::HANDED_OVER`). */
export const HANDED_OVER = 4006;

/** Whether a close code means "do not come back": a broken rule (RFC 6455, 7.4.1), or one of our own. */
export const sentAway = (code: number): boolean => code === 1008 || code >= 4000;

/** See the head of this file. Begins to connect at once; its first state, `connecting`, is no change and is not told. */
export class LiveSocket<In extends { type: string }, Out> {
  /** As `SocketState` says. */
  state: SocketState = "connecting";
  /** Without a message for this long the line is given up and tried anew, ms. Lower it while a set runs. */
  patience = PATIENCE;

  private socket: WebSocket | undefined;
  private attempt = 0;
  private heard = 0;
  private retry: ReturnType<typeof setTimeout> | undefined;
  private readonly check: ReturnType<typeof setInterval>;

  constructor(private readonly line: SocketUser<In, Out>) {
    this.check = setInterval(() => this.giveUpIfDead(), CHECK);
    addEventListener("online", this.hurry);
    document.addEventListener("visibilitychange", this.hurry);
    this.connect();
  }

  /** Sends now, or not at all. @returns whether it went out. */
  send(message: Out): boolean {
    if (this.state !== "open" || !this.socket) return false;
    this.socket.send(JSON.stringify(message));
    return true;
  }

  /** Ends the line for good. */
  close(): void {
    clearInterval(this.check);
    this.stopTrying();
    this.drop(1000);
    // Whom the server sent away stays sent away.
    if (this.state !== "refused") this.enter("closed");
  }

  private connect(): void {
    this.stopTrying();
    this.enter("connecting");
    const url = new URL(this.line.path, location.href);
    url.protocol = url.protocol.replace("http", "ws");
    const socket = new WebSocket(url);
    this.socket = socket;
    this.heard = performance.now();
    socket.onopen = () => this.opened();
    socket.onmessage = (event) => this.receive(String(event.data));
    socket.onclose = (event) => this.lose(event.code);
  }

  private opened(): void {
    // Before anybody hears that the line is open: whoever waited for it sends at once, and hello comes first.
    this.socket?.send(JSON.stringify(this.line.hello()));
    this.enter("open");
  }

  private receive(text: string): void {
    // Page time first: everything after it would count as delay of the network.
    const pageNow = performance.now();
    this.heard = pageNow;
    this.attempt = 0;
    const message = JSON.parse(text) as In;
    if (isBeat(message)) this.answer(message, pageNow);
    this.line.onMessage(message, pageNow);
  }

  private answer(beat: Beat, pageNow: number): void {
    const reply: { type: "beat" } & BeatReply = { type: "beat", id: beat.id, page: pageNow, drawn: this.line.drawn() };
    this.socket?.send(JSON.stringify(reply));
  }

  private lose(code?: number): void {
    this.drop();
    if (code !== undefined && sentAway(code)) return this.enter("refused", code);
    this.enter("lost", code);
    this.retry = setTimeout(() => this.connect(), pauseBefore(this.attempt++, Math.random()));
  }

  private giveUpIfDead(): void {
    const waits = this.state === "open" || this.state === "connecting";
    if (waits && performance.now() - this.heard > this.patience) this.lose();
  }

  /** A dead line answers no closing handshake, so nothing more is awaited from it. */
  private drop(code?: number): void {
    if (!this.socket) return;
    this.socket.onopen = this.socket.onmessage = this.socket.onclose = null;
    this.socket.close(code);
    this.socket = undefined;
  }

  private readonly hurry = (): void => {
    if (this.state === "lost" && document.visibilityState === "visible") this.connect();
  };

  private stopTrying(): void {
    clearTimeout(this.retry);
    this.retry = undefined;
  }

  private enter(state: SocketState, code?: number): void {
    if (this.state === "closed" || this.state === state) return;
    this.state = state;
    this.line.onState(state, code);
  }
}

function isBeat(message: { type: string }): message is { type: "beat" } & Beat {
  return message.type === "beat";
}
