/**
 * What beats and their echoes prove about the offset between two clocks, and how fast they run
 * apart. Pure; see `clock.ts`.
 */

/** At page time `at` the offset was at least, or at most, `offset`; ms. */
export interface Proof {
  readonly at: number;
  readonly offset: number;
}

/** How fast two clocks run apart, and how sure that is: one standard deviation; ms per ms. */
export interface Skew {
  readonly rate: number;
  readonly sd: number;
}

/**
 * How fast the clocks of two ordinary computers run apart, many of them kept in step by network time: one standard deviation, ms per ms.
 * Within a minute the delays themselves leave it open to hundreds of ppm. With 40 ppm here, clocks that run alike are 1.05 ms rms apart between
 * 30 and 90 s at 150±75 ms with 1 % loss in virtual time; with this 0.91, and clocks 50 ppm apart no further than before.
 */
const PRIOR_SD = 20e-6;
/** Only the sharpest proof of each of these is kept, ms. */
const BUCKET = 10_000;
/** Proofs older than this say nothing about the offset any more, ms. */
const WINDOW = 90_000;
/** Oscillators are steadier than networks: their skew is taken from the proofs of this long, ms. */
const MEMORY = 300_000;
/** Clocks are not read more finely than this, ms. */
const READING = 1e-3;

/** Keeps the sharpest proof of each ten seconds of the last five minutes, in one direction. */
export class Proofs {
  private kept: Proof[] = [];

  /** @param sign 1: the highest is the sharpest ("at least"); -1: the lowest ("at most") */
  constructor(private readonly sign: 1 | -1) {}

  add(proof: Proof): void {
    const bucketOf = ({ at }: Proof) => Math.floor(at / BUCKET);
    const place = this.kept.findIndex((other) => bucketOf(other) === bucketOf(proof));
    const other = this.kept[place];
    if (!other) this.kept.push(proof);
    // What the older one has lost by drift since counts as well.
    else if (this.sign * (proof.offset - other.offset) >= -PRIOR_SD * Math.abs(proof.at - other.at)) this.kept[place] = proof;
  }

  /** Forgets what is too old at page time `now`. */
  forget(now: number): void {
    this.kept = this.kept.filter(({ at }) => at >= now - MEMORY);
  }

  clear(): void {
    this.kept = [];
  }

  /**
   * The sharpest of the last minute and a half at page time `at`: each is carried there by the skew, and
   * loosened by how unsure that is. `undefined` when there is none.
   */
  best(at: number, { rate, sd }: Skew): number | undefined {
    let best: number | undefined;
    for (const proof of this.kept) {
      const age = at - proof.at;
      if (age > WINDOW) continue;
      const carried = proof.offset + rate * age - this.sign * sd * Math.abs(age);
      if (best === undefined || this.sign * (carried - best) > 0) best = carried;
    }
    return best;
  }

  /**
   * How unlikely a skew is by these proofs, as a negative logarithm: by as much as it would leave
   * them behind the sharpest on the average, if delays beyond the least were exponential.
   */
  misfit(rate: number, now: number): number {
    if (this.kept.length < 3) return 0;
    let sum = 0;
    let sharpest = -Infinity;
    for (const proof of this.kept) {
      const edge = this.sign * (proof.offset + rate * (now - proof.at));
      sum += edge;
      sharpest = Math.max(sharpest, edge);
    }
    return (this.kept.length - 1) * Math.log(sharpest - sum / this.kept.length + READING);
  }
}

/** Every skew that is thought of: 50 ppm each, which ordinary oscillators keep, in steps of 4. */
const RATES = Array.from({ length: 51 }, (_, i) => (i - 25) * 4e-6);

/**
 * The skew at page time `now` by both directions, which share it: mean and standard deviation of
 * the posterior over `RATES`.
 */
export function skewOf(directions: readonly Proofs[], now: number): Skew {
  const costs = RATES.map((rate) => (rate / PRIOR_SD) ** 2 / 2 + directions.reduce((sum, proofs) => sum + proofs.misfit(rate, now), 0));
  const least = Math.min(...costs);
  const weights = costs.map((cost) => Math.exp(least - cost));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = (of: (rate: number) => number) => RATES.reduce((sum, rate, i) => sum + of(rate) * (weights[i] ?? 0), 0) / whole;
  const rate = mean((r) => r);
  return { rate, sd: Math.sqrt(mean((r) => (r - rate) ** 2)) };
}
