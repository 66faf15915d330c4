/**
 * Plays one set at a time on this screen: bends what is shown towards what is ordered, bakes
 * windows for the eyes, schedules tones and buzzes, and notes what was really shown.
 */
import type { RoomClock } from "../live/clock";
import { degreesOf, pxOf } from "../live/optics";
import { widestPath } from "../live/path";
import { endOf, phaseAt, rateAt, shifted, startOf } from "../live/timeline";
import { PAST, REPLACE, WINDOW } from "../live/track";
import type { Device } from "../wire/Device";
import type { Ending } from "../wire/Ending";
import type { Fact } from "../wire/Fact";
import type { SetView } from "../wire/SetView";
import type { Showing } from "../wire/Showing";
import type { Timeline } from "../wire/Timeline";
import type { Buzz } from "./buzz";
import type { Figure, Shape } from "./dot";
import { Frames } from "./frames";
import { eased, extremes, joined, resting } from "./shown";
import type { Tones } from "./tones";
import { EASE, type Watchdog } from "./watchdog";

/** Before it moves the dot rests for a second (`leeward_core::safety::REST_MS`) and the frames it takes to draw it, ms. */
const REST = 1_100;
/** The compositor takes up a new window within this, ms; until then old and new agree, unless they differ by less than anybody sees. */
const LEAD = 50;
/** Cycles worked in within LEAD, or gained by a change of rate in that time: of what a frame moves anyway a tenth at 1 Hz, four tenths at the least rate. */
const SLIGHT = 0.002;
/** `Showing` goes out so often, ms: with a new window, since to read back how far the screen has got costs the page a frame as well. */
const SHOW = REPLACE;
const SECOND = 1_000;

/** `leeward_core::safety::SET_MS`: no set lasts longer, ms. */
const LONGEST_SET = 360_000;

/** A set that meets that limit rests at the last extreme before it: half a cycle at the least rate, 0.3 Hz, ms. */
const LAST_HALF_CYCLE = 1_700;

/** What the player works with and whom it tells. */
export interface Stage {
  readonly dot: Figure;
  /** The pacer's figure, shown when the hands are on and the eyes are off. */
  readonly pacer: Figure;
  readonly tones: Tones;
  readonly buzz: Buzz;
  readonly clock: RoomClock;
  readonly watchdog: Watchdog;
  device(): Device;
  /** Whether the pacer's figure may be drawn. */
  mayBlink(): boolean;
  /** See `once_shown`. */
  onceShown(then: (last: number | undefined) => void): void;
  onFact(set: string, at: number, fact: Fact): void;
  onShowing(showing: Omit<Showing, "clock">): void;
  /** The set came to its own end. */
  onFinished(): void;
  /** The desk was silent for too long, or this page hung. */
  onSilence(): void;
}

/** One set on the screen. Times are page time, ms; timelines are in page time too. */
interface Playing {
  set: SetView;
  /** What the eyes follow; `undefined`: nothing. */
  readonly figure: Figure | undefined;
  readonly shape: Shape;
  readonly width: number;
  readonly restUntil: number;
  /** The ordered timeline as it is followed here. */
  course: Timeline;
  /** The same with the tail of the present window: what the screen does if nothing follows. */
  shown: Timeline;
  bakedAt: number;
  easesAt: number;
  /** Set while it is being eased to rest for good. */
  easing: { until: number; ending: Ending } | undefined;
  begun: boolean;
  showingAt: number;
  secondAt: number;
  readonly frames: Frames;
}

/** See the head of this file. */
export class Player {
  private playing: Playing | undefined;
  /** Tells that the last set rests, once. */
  private telling: ((last?: number) => void) | undefined;

  constructor(private readonly stage: Stage) {}

  /** Whether anything moves, sounds or is easing to rest. */
  get active(): boolean {
    return this.playing !== undefined;
  }

  /** Begins a set, or takes up its latest timeline. */
  play(set: SetView, now: number): void {
    const { playing } = this;
    if (playing?.set.id === set.id) playing.set = set;
    else this.begin(set, now);
    if (!this.playing?.easing) this.bake(now);
  }

  /** At rest at once. */
  cut(ending: Ending, now: number): void {
    this.rest(ending, now);
  }

  /** To rest within 600 ms, sooner after a long silence. */
  ease(ending: Ending, now: number): void {
    const { playing } = this;
    if (!playing) return;
    const until = this.stage.watchdog.restBy(now);
    playing.shown = eased(playing.shown, now, Math.max(1, until - now));
    playing.easing = { until, ending };
    playing.figure?.play(playing.shown, playing.shape, now - PAST, until + 1);
  }

  /** Tells now that the last set rests, if that has not been told: there may be no later. */
  settle(): void {
    this.telling?.();
  }

  /** Call it every `TICK`. */
  tick(now: number): void {
    const { playing } = this;
    if (!playing) return;
    const { easing } = playing;
    if (easing && now >= easing.until) return this.rest(easing.ending, now);
    if (!easing && (this.stage.watchdog.tooSilent(now) || now > playing.easesAt)) return this.stage.onSilence();
    if (!easing && this.isOver(playing, now)) return this.finish(now);
    if (!easing && now - playing.bakedAt >= REPLACE) this.bake(now);
    this.beat(playing, now, easing?.until ?? this.stage.watchdog.lastMotion);
    playing.frames.tick(now);
    this.begins(playing, now);
    this.note(playing, now);
  }

  /** Whether `frame` is to be called in the next animation frame. */
  get wantsFrame(): boolean {
    return this.playing?.frames.wanted === true;
  }

  /** Call it in an animation frame. */
  frame(now: number): void {
    const { playing } = this;
    if (!playing) return;
    playing.frames.add(now);
  }

  private begin(set: SetView, now: number): void {
    const { path, comfort } = set.plan;
    const { eyes, hands } = set.plan.channels;
    const device = this.stage.device();
    const dot = pxOf(set.plan.dot, device);
    const field = { width: device.width_px, height: device.height_px };
    const width = eyes ? Math.min(pxOf(set.plan.width, device), widestPath(path, field, dot)) : 0;
    const figure = eyes ? this.stage.dot : hands && this.stage.mayBlink() ? this.stage.pacer : undefined;
    const still = resting(this.ordered(set, now), now, now + REST);
    this.playing = {
      set,
      figure,
      shape: { path, sweep: comfort.sweep, width, dot },
      width: degreesOf(width, device),
      restUntil: now + REST,
      course: still,
      shown: still,
      bakedAt: now,
      easesAt: Infinity,
      easing: undefined,
      begun: false,
      showingAt: now,
      secondAt: now,
      frames: new Frames(),
    };
    figure?.show(this.playing.shape);
  }

  /** Notes when it began, once it is seen or heard; the rest before that is no part of it. */
  private begins(playing: Playing, now: number): void {
    if (playing.begun) return;
    const start = Math.max(startOf(this.ordered(playing.set, now)) ?? Infinity, playing.restUntil);
    if (now < start) return void playing.frames.take();
    // Without the dot it is heard or felt at its extremes.
    const sign = playing.set.plan.channels.eyes ? start : extremes(playing.shown, start, now)[0]?.at;
    if (sign === undefined || this.reached(playing, now) < sign) return;
    playing.begun = true;
    playing.secondAt = start;
    this.fact(playing, start, { kind: "shown", width: playing.width });
  }

  private bake(now: number): void {
    const { playing } = this;
    if (!playing) return;
    playing.frames.look(now);
    const ordered = this.ordered(playing.set, now);
    const inTime = Math.abs(phaseAt(playing.course, now) - phaseAt(ordered, now)) <= SLIGHT;
    playing.course = joined(playing.course, ordered, Math.max(inTime ? now : now + LEAD, playing.restUntil));
    const until = Math.min(now + WINDOW, this.stage.watchdog.lastMotion);
    if (until <= now) return this.stage.onSilence();
    playing.bakedAt = now;
    playing.easesAt = Math.max(now, until - EASE);
    playing.shown = eased(playing.course, playing.easesAt, until - playing.easesAt);
    playing.figure?.play(playing.shown, playing.shape, now - PAST, until);
  }

  /** The ordered timeline in page time. */
  private ordered(set: SetView, now: number): Timeline {
    return shifted(set.timeline, now - this.stage.clock.roomTime(now));
  }

  private isOver(playing: Playing, now: number): boolean {
    const end = endOf(playing.course) ?? now;
    return now >= end && this.reached(playing, now) >= end;
  }

  /** Reading it back costs the page a frame of its own: only where it is needed. */
  private reached(playing: Playing, now: number): number {
    return playing.figure?.reached ?? now;
  }

  private finish(now: number): void {
    const { playing } = this;
    if (!playing) return;
    this.rest(playing.set.ended ?? ownEnding(playing.set), now);
    this.stage.onFinished();
  }

  private rest(ending: Ending, now: number): void {
    const { playing } = this;
    if (!playing) return;
    this.begins(playing, now);
    const reached = this.reached(playing, now);
    playing.figure?.freeze();
    this.stage.tones.cut();
    this.stage.buzz.cut();
    this.playing = undefined;
    this.show(playing, reached, false);
    this.telling = this.rested(playing, reached, ending);
    if (playing.figure) this.stage.onceShown(this.telling);
    else this.telling();
  }

  /** What tells that a set rests, once; the screen went on for some frames after it was halted. */
  private rested(playing: Playing, reached: number, ending: Ending): (last?: number) => void {
    let told = false;
    return (last = reached) => {
      if (told) return;
      told = true;
      const at = Math.max(reached, last);
      this.fact(playing, at, { kind: "rested", phase: phaseAt(playing.shown, at), ending });
    };
  }

  /** Tones and buzzes that come due until `until`. The pacer for the hands is heard as well as felt. */
  private beat({ set, shown }: Playing, now: number, until: number): void {
    const { channels, comfort } = set.plan;
    if (channels.ears || channels.hands) this.stage.tones.schedule(shown, comfort, now, until);
    if (channels.hands && comfort.vibration && this.stage.device().vibration) this.stage.buzz.schedule(shown, now, until);
  }

  private note(playing: Playing, now: number): void {
    if (now - playing.showingAt >= SHOW) {
      playing.showingAt += SHOW * Math.floor((now - playing.showingAt) / SHOW);
      this.show(playing, this.reached(playing, now), true);
    }
    if (playing.begun && now - playing.secondAt >= SECOND) {
      const reached = this.reached(playing, now);
      playing.secondAt += SECOND;
      this.fact(playing, reached, { kind: "second", phase: phaseAt(playing.shown, reached), ...playing.frames.take() });
    }
  }

  private show({ set, shown, width }: Playing, reached: number, moving: boolean): void {
    const rate = moving ? rateAt(shown, reached) : 0;
    this.stage.onShowing({ set: set.id, moving, at: this.stage.clock.roomTime(reached), phase: phaseAt(shown, reached), rate, width });
  }

  private fact({ set }: Playing, pageTime: number, fact: Fact): void {
    this.stage.onFact(set.id, this.stage.clock.roomTime(pageTime), fact);
  }
}

/** What brought a set to the end of its timeline, as far as its timeline tells. */
function ownEnding({ plan, timeline }: SetView): Ending {
  const lasted = (endOf(timeline) ?? 0) - (startOf(timeline) ?? 0);
  if (plan.length.kind === "cycles" && phaseAt(timeline, Infinity) >= plan.length.cycles - 1e-6) return "done";
  return lasted >= LONGEST_SET - LAST_HALF_CYCLE ? "hard_limit" : "ended_by_clinician";
}
