// The client's page without a browser: the real clock, watchdog and player, and a screen that plays windows by itself, as a
// compositor does.

import { anyClock, BEAT, heardBeats, signsOf, toldOf, traceOf, transit } from './link.mjs';
import { started } from './orders.mjs';

/** How often the page drives its player, ms: TICK of web/src/stage/frames.ts. */
const TICK = 100;
/** The screen is read so often, ms. */
const LOOK = 1;
/** Beats before the first set, ms: the silence limit is found from a hundred gaps. */
const LEARNING = 30_000;
/** Less than this is rest, cycles. */
const STILL = 1e-9;
const DEVICE = { width_px: 1200, height_px: 700, px_per_mm: null, distance_mm: null };

/** `leeward_core::wire::Comfort::default`. */
const COMFORT = { sweep: 'sine', colours: 'sand', timbre: 'round', pitch: 450, tone_ms: 120, level: 100, vibration: false };
const PLAN = {
  rate: 1, width: 18, dot: 1.5, path: 'across', length: { kind: 'open' }, channels: { eyes: true, ears: false, hands: false }, comfort: COMFORT,
};

/**
 * A set runs, then the link of `end` ("desk" or "stage") is cut at any moment, and nobody tells the page.
 *
 * @returns how long after the cut the dot still moved, ms
 */
export function restAfterCut(link, random, end, { RoomClock, Watchdog, Player, phaseAt }) {
  const takes = () => transit(link, random);
  const cut = LEARNING + 4_000 + 2_000 * random();
  const until = cut + 5_000;
  const [pageClock, deskPage] = [anyClock(random), anyClock(random)];
  const answers = heardBeats(traceOf(until, takes, takes), deskPage).map(({ beat, heard }) => ({ sent: beat.sent, heard }));
  const signs = signsOf(answers.filter(({ heard }) => end === 'stage' || heard < cut));
  // The room does not beat to both pages at the same moment.
  const beats = heardBeats(traceOf(until, takes, takes, BEAT * random()), pageClock).filter(({ arrival }) => end === 'desk' || arrival < cut);
  const page = new Page(new RoomClock(), new Watchdog(), Player, phaseAt);
  let moved = 0;
  let [next, sign, ticks, phase] = [0, -1, LEARNING + TICK * random(), undefined];
  for (let at = 0; at < until; at += at < LEARNING ? TICK : LOOK) {
    for (; next < beats.length && beats[next].arrival <= at; next++) {
      const { beat, arrival } = beats[next];
      while (signs[sign + 1]?.heard <= beat.sent) sign++;
      page.beat({ ...beat, ...toldOf(signs[sign], beat.sent) }, pageClock.page(arrival));
    }
    if (at < LEARNING) continue;
    const now = pageClock.page(at);
    if (phase === undefined) page.play(page.view(started(at + 1_500, 1)), now);
    else if (at >= ticks) {
      page.tick(now);
      ticks += TICK;
    }
    const before = phase;
    phase = page.phase(now);
    if (at > cut && Math.abs(phase - before) > STILL) moved = at - cut;
  }
  if (page.rested !== true) throw new Error(`the page went on after the link of the ${end} was cut`);
  return moved;
}

/** See the head of this file. All times are page time but those of a set. */
export class Page {
  rested = false;
  #window;
  #last = 0;
  #now = 0;
  #clock;
  #dog;
  #player;
  #phaseAt;

  constructor(clock, dog, Player, phaseAt) {
    this.#clock = clock;
    this.#dog = dog;
    this.#phaseAt = phaseAt;
    const nothing = () => {};
    const page = this;
    this.#player = new Player({
      clock,
      watchdog: dog,
      tones: { schedule: nothing, cut: nothing },
      buzz: { schedule: nothing, cut: nothing },
      mayBlink: () => false,
      onceShown: (then) => then(undefined),
      device: () => DEVICE,
      onFact: nothing,
      onShowing: nothing,
      onFinished: nothing,
      onSilence: () => this.#player.ease('link_lost', this.#now),
      dot: {
        show: nothing,
        play: (shown, _shape, from, to) => (this.#window = { shown, from, to }),
        freeze: () => {
          this.#last = this.phase(this.#now);
          this.#window = undefined;
          this.rested = true;
        },
        get reached() {
          return page.#window && Math.min(page.#now, page.#window.to);
        },
      },
    });
  }

  /** As `hear` of web/src/stage/main.ts does for an admitted client. */
  beat(beat, pageNow) {
    this.#clock.onBeat(beat, pageNow);
    const left = this.#clock.known ? this.#clock.pageTime(beat.sent, pageNow) : pageNow;
    this.#dog.onBeat(left, pageNow, beat.desk_silent, beat.desk_trip, true);
  }

  /** A set as the room shows it to the page, with these segments. */
  view(segments) {
    return { id: 'set', number: 1, ended: null, plan: PLAN, timeline: { segments } };
  }

  play(set, now) {
    this.#now = now;
    this.#clock.hold(true, now);
    this.#player.play(set, now);
  }

  tick(now) {
    this.#now = now;
    this.#player.tick(now);
  }

  /** What the screen shows, whether or not the page's script runs. */
  phase(now) {
    this.#now = now;
    return this.#window ? this.#phaseAt(this.#window.shown, Math.min(now, this.#window.to)) : this.#last;
  }
}
