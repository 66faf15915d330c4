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

/** How far two ordinary oscillators drift apart, as a standard deviation. */
const PRIOR_SD = 40e-6;
/** Only the sharpest proof of each of these is kept, ms. */
const BUCKET = 10_000;
/** Proofs older than this say nothing about the offset any more, ms. */
const WINDOW = 60_000;
/** Oscillators are steadier than networks: their skew is taken from the proofs of this long, ms. */
const MEMORY = 300_000;

/** Nothing is known about these two clocks. */
export const UNKNOWN_SKEW: Skew = { rate: 0, sd: PRIOR_SD };

/** Keeps the sharpest proof of each ten seconds of the last five minutes, in one direction. */
export class Proofs {
  private kept: { sharpest: Proof; count: number }[] = [];

  /** @param sign 1: the highest is the sharpest ("at least"); -1: the lowest ("at most") */
  constructor(private readonly sign: 1 | -1) {}

  add(proof: Proof): void {
    const bucketOf = (p: Proof) => Math.floor(p.at / BUCKET);
    const bucket = this.kept.find(({ sharpest }) => bucketOf(sharpest) === bucketOf(proof));
    if (!bucket) this.kept.push({ sharpest: proof, count: 1 });
    else {
      bucket.count++;
      // What the older one has lost by drift since counts as well.
      const drift = PRIOR_SD * Math.abs(proof.at - bucket.sharpest.at);
      if (this.sign * (proof.offset - bucket.sharpest.offset) >= -drift) bucket.sharpest = proof;
    }
  }

  /** Forgets what is too old at page time `now`. */
  forget(now: number): void {
    this.kept = this.kept.filter(({ sharpest }) => sharpest.at >= now - MEMORY);
  }

  clear(): void {
    this.kept = [];
  }

  /**
   * The sharpest of the last minute at page time `at`: each is carried there by the skew, and
   * loosened by how unsure that is. `undefined` when there is none.
   */
  best(at: number, { rate, sd }: Skew): number | undefined {
    let best: number | undefined;
    for (const { sharpest } of this.kept) {
      const age = at - sharpest.at;
      if (age > WINDOW) continue;
      const carried = sharpest.offset + rate * age - this.sign * sd * Math.abs(age);
      if (best === undefined || this.sign * (carried - best) > 0) best = carried;
    }
    return best;
  }

  /**
   * One proof for each ten seconds, all of them sharpened by a like number of messages: the best
   * of two is duller than the best of forty, which would look like drift.
   */
  alike(): Proof[] {
    const most = Math.max(0, ...this.kept.map(({ count }) => count));
    return this.kept.filter(({ count }) => 2 * count >= most).map(({ sharpest }) => sharpest);
  }
}

/**
 * The skew by least squares over the proofs of both directions, which share one slope and lie a
 * network apart, shrunk towards 0 as far as their scatter makes it less sure than the prior (the
 * posterior of two normal distributions).
 */
export function skewOf(directions: readonly Proofs[]): Skew {
  let [xx, xy, yy, freedom] = [0, 0, 0, -1];
  for (const proofs of directions) {
    const points = proofs.alike();
    if (points.length < 2) continue;
    const mean = (pick: (p: Proof) => number) => points.reduce((sum, p) => sum + pick(p), 0) / points.length;
    const [x, y] = [mean((p) => p.at), mean((p) => p.offset)];
    for (const point of points) {
      xx += (point.at - x) ** 2;
      xy += (point.at - x) * (point.offset - y);
      yy += (point.offset - y) ** 2;
    }
    freedom += points.length - 1;
  }
  if (freedom < 2) return UNKNOWN_SKEW;
  // Proofs without any scatter would be divided by 0; clocks are not read more finely than this, ms².
  const scatter = Math.max(1e-6, (yy - xy ** 2 / xx) / freedom);
  const certainty = xx / scatter + 1 / PRIOR_SD ** 2;
  return { rate: xy / scatter / certainty, sd: 1 / Math.sqrt(certainty) };
}
