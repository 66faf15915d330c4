// What the player's tests play on: virtual time, and a screen that plays windows as a compositor does, by itself until they end,
// whether or not the page's script runs. Not part of any page.
import assert from "node:assert/strict";
import { usual } from "../live/comfort.fixture";
import { RoomClock } from "../live/clock";
import { phaseAt } from "../live/timeline";
import type { Fact } from "../wire/Fact";
import type { SetView } from "../wire/SetView";
import type { Showing } from "../wire/Showing";
import type { Timeline } from "../wire/Timeline";
import type { Buzz } from "./buzz";
import { Player } from "./player";
import type { Tones } from "./tones";
import { Watchdog } from "./watchdog";

/** Room time - page time. */
export const OFFSET = 123_456;

class Screen {
  window: { shown: Timeline; from: number; to: number } | undefined;
  now = 0;
  windows: { made: number; from: number; to: number }[] = [];
  show() {}
  play(shown: Timeline, _shape: unknown, from: number, to: number) {
    this.window = { shown, from, to };
    this.windows.push({ made: this.now, from, to });
  }
  freeze() {
    this.window = undefined;
  }
  get reached() {
    return this.window && Math.min(this.now, this.window.to);
  }
  get phase() {
    return this.window && phaseAt(this.window.shown, Math.min(this.now, this.window.to));
  }
}

/** A page, its screen and the desk's signs, in time that passes when it is told to. */
export class Room {
  readonly screen = new Screen();
  readonly pacer = new Screen();
  readonly used = new Set<string>();
  vibration = false;
  mayBlink = true;
  /** Page time of the last frame that moved after the dot was halted, where the screen was late; ms. */
  lastMoving: number | undefined;
  /** Whether frames are drawn that could tell. */
  draws = true;
  readonly dog = new Watchdog();
  readonly clock = new RoomClock();
  readonly facts: Fact[] = [];
  /** Page time of each. */
  readonly factsAt: number[] = [];
  readonly showings: Omit<Showing, "clock">[] = [];
  finished = 0;
  silent = 0;
  now = 0;
  deskSpeaks = true;
  lastSign = 0;
  /** Every phase that the screen showed, each ms. */
  readonly seen: { at: number; phase: number }[] = [];
  readonly player: Player;

  constructor() {
    const plays = (name: string) => ({ schedule: () => this.used.add(name), cut() {} });
    this.player = new Player({
      dot: this.screen,
      pacer: this.pacer,
      tones: plays("tones") as unknown as Tones,
      buzz: plays("buzz") as unknown as Buzz,
      clock: this.clock,
      watchdog: this.dog,
      device: () => ({
        width_px: 1200,
        height_px: 700,
        px_per_mm: null,
        distance_mm: null,
        reduced_motion: false,
        sound: false,
        sides: null,
        vibration: this.vibration,
        wake_lock: false,
        full_screen: false,
        checking: false,
      }),
      mayBlink: () => this.mayBlink,
      onceShown: (then) => this.draws && then(this.lastMoving),
      onFact: (_set, at, fact) => {
        this.facts.push(fact);
        this.factsAt.push(at - OFFSET);
      },
      onShowing: (showing) => this.showings.push(showing),
      onFinished: () => this.finished++,
      onSilence: () => {
        this.silent++;
        this.player.ease("link_lost", this.now);
      },
    });
    for (let i = 0; i < 3; i++) this.beat(i, 10);
  }

  private beat(id: number, at: number) {
    const echo = id === 0 ? null : { id: id - 1, page: at, heard: at + OFFSET };
    this.clock.onBeat({ id, sent: at + OFFSET, echo, desk_silent: 0, desk_trip: 0 }, at);
    this.dog.onBeat(at, at, 0, 0, true);
    this.lastSign = at;
  }

  /** Lets `ms` pass; the script hangs when `hung`. */
  pass(ms: number, hung = false) {
    for (const end = this.now + ms; this.now < end; ) {
      this.now = this.screen.now = this.now + 1;
      if (this.deskSpeaks && !hung && this.now % 250 === 0) this.beat(this.now, this.now);
      if (!hung && this.now % 100 === 0) this.player.tick(this.now);
      if (!hung && this.now % 17 === 0 && this.player.wantsFrame) this.player.frame(this.now);
      const phase = this.screen.phase;
      if (phase !== undefined) this.seen.push({ at: this.now, phase });
    }
  }

  get restedAt(): number {
    const last = [...this.seen].reverse().find(({ phase }, i, all) => i > 0 && Math.abs(phase - all[i - 1]!.phase) > 1e-9);
    return last?.at ?? -Infinity;
  }

  assertSmooth(fastest: number) {
    this.seen.forEach(({ phase }, i) => {
      const step = i === 0 ? 0 : phase - this.seen[i - 1]!.phase;
      assert.ok(step >= -1e-9 && step <= fastest / 1000 + 1e-4, `${step} at ${this.seen[i]!.at}`);
    });
  }
}

/** A set with ramps of a second that is to begin at page time `startsAt`. */
export function set(rate: number, cycles: number, startsAt: number, change: Partial<SetView["plan"]> = {}): SetView {
  const steady = ((cycles - rate) / rate) * 1000;
  const room = startsAt + OFFSET;
  return {
    id: "a",
    number: 1,
    ended: null,
    plan: {
      rate,
      width: 18,
      dot: 1.5,
      path: "across",
      length: { kind: "cycles", cycles },
      channels: { eyes: true, ears: false, hands: false },
      comfort: usual,
      purpose: "processing",
      ...change,
    },
    timeline: {
      segments: [
        { starts_at: room, lasts: 1000, phase: 0, rate_from: 0, rate_to: rate },
        { starts_at: room + 1000, lasts: steady, phase: rate / 2, rate_from: rate, rate_to: rate },
        { starts_at: room + 1000 + steady, lasts: 1000, phase: cycles - rate / 2, rate_from: rate, rate_to: 0 },
      ],
    },
  };
}
