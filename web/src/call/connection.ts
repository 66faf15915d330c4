/**
 * The connection to the other page of a session, for one picture and one voice each way. The room passes on what both need to find each other; what
 * they see and hear never comes by the server. One side alone offers, and the other asks it to (`again`): where two offers meet one of them is taken back
 * (the rollback of RFC 8829, 4.1.10.2), after which Chromium goes on decoding pictures and shows none.
 */
import type { FromCaller } from "../wire/FromCaller";
import type { Sends } from "../wire/Sends";
import type { Signal } from "../wire/Signal";
import type { ToCaller } from "../wire/ToCaller";
import type { Unable } from "../wire/Unable";
import type { Ways } from "../wire/Ways";

/** How the call stands: none, being connected, there, lost and being connected anew; or why there can be none. */
export type CallState = "none" | "connecting" | "there" | "lost" | Unable;

/** What is sent: a track, or nothing in its place. */
export interface Own {
  readonly picture: MediaStreamTrack | null;
  readonly voice: MediaStreamTrack | null;
}

/** What a page tells its call, and hears from it. */
export interface CallUser {
  /** Sends to the room, now or not at all. */
  send(said: FromCaller): void;
  /** What this page sends at this moment. */
  own(): Own;
  /** The other has said what they send. */
  onSends(sends: Sends): void;
  /** The other's picture or voice comes by this track now. */
  onTrack(track: MediaStreamTrack): void;
  /** Every change. */
  onState(state: CallState): void;
  /** Makes a connection; a test has another. */
  make(config: RTCConfiguration): RTCPeerConnection;
}

/** New ways are asked for so long before the old password ends, ms. */
const BEFORE_END = 60_000;
/** A connection that does not come back by itself is negotiated anew after this time, ms; twice as long after each time in vain, up to the last. */
const ANEW_AFTER = 1_500;
const ANEW_AFTER_AT_MOST = 12_000;
/** One that never came is tried anew after this time at first, ms. */
const FIRST_ANEW_AFTER = 4_000;
/** The room passes on no longer description (LONGEST_SDP of leeward_core), bytes; a browser's own takes some 6,000. */
const LONGEST_SDP = 12 * 1024;

/** See the head of this file. */
export class Connection {
  /** How it stands. */
  state: CallState = "none";
  /** Since when, page time, ms. */
  since = 0;

  private peer: RTCPeerConnection | undefined;
  private call = 0;
  private offers = false;
  private renewal: ReturnType<typeof setTimeout> | undefined;
  private anew: ReturnType<typeof setTimeout> | undefined;
  private wait = ANEW_AFTER;
  /** What the other said could not be taken: the two do not agree, whatever still comes. */
  private amiss = false;
  /** One signal after the other: each is taken in whole before the next. */
  private turn: Promise<void> = Promise.resolve();

  constructor(private readonly user: CallUser) {}

  /** Takes in what the room says about the call. */
  hear(said: ToCaller): void {
    switch (said.kind) {
      case "begin":
        return this.begin(said.call, said.offers, said.ways);
      case "signal":
        if (said.call !== this.call) return;
        return this.signalled(said.signal, said.call);
      case "ways":
        if (said.call !== this.call) return;
        this.peer?.setConfiguration(configOf(said.ways));
        this.plan(said.ways);
        return;
      case "over":
        return this.end();
      case "unable":
        // What is not passed on ends no connection that stands.
        if (this.state !== "there") this.enter(said.why);
    }
  }

  /** What this page sends has changed: the connection goes on with it, without a word to the room. */
  async sendOwn(): Promise<void> {
    const own = this.user.own();
    for (const { sender, receiver } of this.peer?.getTransceivers() ?? []) {
      await sender.replaceTrack(receiver.track.kind === "video" ? own.picture : own.voice);
    }
  }

  /** Tells the other what this page sends. */
  say(sends: Sends): void {
    if (this.peer) this.signal({ kind: "sends", ...sends });
  }

  /** Another network, or the line came back: ways are looked for anew, while what still comes goes on. */
  restart(): void {
    if (!this.peer) return;
    this.user.send({ kind: "renew", call: this.call });
    if (this.offers) this.offerAnew(this.peer);
    else this.signal({ kind: "again" });
  }

  /** An offer that has no answer may have been lost: a browser makes no other before it is answered, so the same is sent again. */
  private offerAnew(peer: RTCPeerConnection): void {
    if (peer.signalingState === "have-local-offer") this.describe(peer, "offer");
    else peer.restartIce();
  }

  /** Figures of the browser; nothing while there is no call. */
  async stats(): Promise<RTCStatsReport | undefined> {
    return this.peer?.getStats();
  }

  /** Ends it on this page, for good or until the room begins another. */
  end(): void {
    this.drop();
    this.enter("none");
  }

  /** Closes the connection that there is. */
  drop(): void {
    clearTimeout(this.renewal);
    clearTimeout(this.anew);
    this.peer?.close();
    this.peer = undefined;
    // What a closed connection was asked to do may never end.
    this.turn = Promise.resolve();
  }

  private begin(call: number, offers: boolean, ways: Ways): void {
    this.drop();
    [this.call, this.offers] = [call, offers];
    const peer = this.user.make(configOf(ways));
    this.peer = peer;
    [this.amiss, this.wait] = [false, FIRST_ANEW_AFTER];
    this.enter("connecting");
    this.plan(ways);
    this.tryAnew(peer);
    peer.onicecandidate = ({ candidate }) => {
      if (this.peer !== peer) return;
      const { candidate: text, sdpMid: mid, sdpMLineIndex: line } = candidate ?? { candidate: "", sdpMid: null, sdpMLineIndex: null };
      this.signal({ kind: "candidate", candidate: text, mid, line });
    };
    peer.ontrack = ({ track }) => this.user.onTrack(track);
    peer.onconnectionstatechange = () => this.follow(peer);
    // The one that offers opens the places for picture and voice, and the other takes them: opened by both there would be two of each.
    if (!offers) return;
    peer.onnegotiationneeded = () => {
      this.turn = this.turn.then(() => this.offer(peer));
    };
    this.open(peer);
  }

  private open(peer: RTCPeerConnection): void {
    const { picture, voice } = this.user.own();
    peer.addTransceiver(voice ?? "audio", { direction: "sendrecv" });
    peer.addTransceiver(picture ?? "video", { direction: "sendrecv" });
  }

  private signalled(signal: Signal, call: number): void {
    if (signal.kind === "sends") this.user.onSends(signal);
    else this.turn = this.turn.then(() => this.take(signal, call));
  }

  private async offer(peer: RTCPeerConnection): Promise<void> {
    if (this.peer !== peer) return;
    try {
      await peer.setLocalDescription();
      this.describe(peer, "offer");
    } catch {
      // The connection was closed meanwhile.
    }
  }

  private async take(signal: Exclude<Signal, { kind: "sends" }>, call: number): Promise<void> {
    const peer = this.peer;
    if (!peer || call !== this.call) return;
    try {
      if (signal.kind === "candidate") {
        const { candidate, mid: sdpMid, line: sdpMLineIndex } = signal;
        return await peer.addIceCandidate(candidate === "" ? undefined : { candidate, sdpMid, sdpMLineIndex });
      }
      if (signal.kind === "again") return this.offers ? this.offerAnew(peer) : undefined;
      // Each side takes what its part has it take.
      if ((signal.kind === "offer") === this.offers) return;
      // An offer that was sent twice is answered twice.
      if (signal.kind === "answer" && peer.signalingState !== "have-local-offer") return;
      await peer.setRemoteDescription({ type: signal.kind, sdp: signal.sdp });
      if (signal.kind === "offer") await this.answer(peer);
      this.amiss = false;
      this.follow(peer);
    } catch {
      // It cannot go on from there: it is negotiated anew.
      this.amiss = true;
      this.lost(peer);
    }
  }

  private async answer(peer: RTCPeerConnection): Promise<void> {
    for (const transceiver of peer.getTransceivers()) transceiver.direction = "sendrecv";
    await this.sendOwn();
    await peer.setLocalDescription();
    this.describe(peer, "answer");
  }

  private describe(peer: RTCPeerConnection, kind: "offer" | "answer"): void {
    if (this.peer !== peer || !peer.localDescription) return;
    const { sdp } = peer.localDescription;
    // As with what the room does not pass on: it ends no connection that stands.
    if (sdp.length > LONGEST_SDP) return this.state === "there" ? undefined : this.enter("unfit");
    this.signal({ kind, sdp });
  }

  private follow(peer: RTCPeerConnection): void {
    if (this.peer !== peer) return;
    if (peer.connectionState === "connected" && !this.amiss) {
      clearTimeout(this.anew);
      this.wait = ANEW_AFTER;
      return this.enter("there");
    }
    if (peer.connectionState === "disconnected" || peer.connectionState === "failed") this.lost(peer);
  }

  /** It often comes back by itself; if it does not, ways are looked for anew. */
  private lost(peer: RTCPeerConnection): void {
    if (this.state === "there") this.enter("lost");
    this.tryAnew(peer);
  }

  private tryAnew(peer: RTCPeerConnection): void {
    clearTimeout(this.anew);
    this.anew = setTimeout(() => {
      if (this.peer !== peer || this.state === "there") return;
      this.restart();
      this.wait = Math.min(this.wait * 2, ANEW_AFTER_AT_MOST);
      this.tryAnew(peer);
    }, this.wait);
  }

  private plan(ways: Ways): void {
    clearTimeout(this.renewal);
    if (ways.urls.length === 0) return;
    this.renewal = setTimeout(() => this.user.send({ kind: "renew", call: this.call }), Math.max(ways.holds_for - BEFORE_END, BEFORE_END));
  }

  private signal(signal: Signal): void {
    this.user.send({ kind: "signal", call: this.call, signal });
  }

  private enter(state: CallState): void {
    if (state === this.state) return;
    this.state = state;
    this.since = performance.now();
    this.user.onState(state);
  }
}

/** By the relay alone where the practice wants it so: the browser then does not even look for other ways. */
export function configOf(ways: Ways): RTCConfiguration {
  const { urls, username, credential } = ways;
  return {
    iceServers: urls.length > 0 ? [{ urls, username, credential }] : [],
    iceTransportPolicy: ways.relay_only ? "relay" : "all",
    bundlePolicy: "max-bundle",
    rtcpMuxPolicy: "require",
  };
}
