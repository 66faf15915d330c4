// What the lines share: verdicts, statistics, seeded chance.

/** The value below which `share` (0 to 1) of `values` lie: the nearest rank, so always one that was measured. */
export function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
}

/** Root mean square. */
export const rms = (values) => Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);

/** The slope of the straight line that fits `points`, each `[x, y]`, best by least squares. */
export function slope(points) {
  const mean = (at) => points.reduce((sum, point) => sum + point[at], 0) / points.length;
  const [x, y] = [mean(0), mean(1)];
  const sum = (of) => points.reduce((all, point) => all + of(point), 0);
  return sum((point) => (point[0] - x) * (point[1] - y)) / sum((point) => (point[0] - x) ** 2);
}

/** PASS when `value` is at most `most`; the text says both and their ratio. */
export const atMost = (value, most, unit, what) =>
  judged(value <= most, `${what} ${said(value)}${unit}, at most ${most}${unit}${most > 0 ? ` (${(value / most).toFixed(2)} of it)` : ''}`);

/** PASS when `value` is at least `least`; the text says both. */
export const atLeast = (value, least, unit, what) => judged(value >= least, `${what} ${said(value)}${unit}, at least ${least}${unit}`);

const judged = (good, text) => ({ verdict: good ? 'PASS' : 'SHORT', text });

const said = (value) => (Number.isInteger(value) ? String(value) : value.toFixed(2));

/** Numbers from 0 up to 1 by xorshift32 (Marsaglia 2003), the same for the same `seed`, an integer from 0 up. */
export function chance(seed) {
  // Near seeds would begin alike: they are spread by an odd factor, and the first draws are passed over.
  let state = (Math.imul(seed + 1, 0x9e3779b1) | 1) >>> 0;
  const draw = () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
  for (let i = 0; i < 16; i++) draw();
  return draw;
}
