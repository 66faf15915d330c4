// What a course of ratings is said to do, as the server's charts say it (leeward_core::chart). "Fell", "rose" and
// "stayed" only where they are true of every step. Bound to tests/reference/ratings.json.

/** The finding without a full stop; `values` is all that was asked, in order. */
export function finding(name: string, values: readonly number[]): string {
  const first = values[0];
  const last = values.at(-1);
  if (first === undefined || last === undefined) return `${name} was not asked`;
  if (values.length === 1) return `${name} was asked once: ${first}`;
  const every = (fits: (a: number, b: number) => boolean): boolean => values.slice(1).every((value, index) => fits(values[index] ?? value, value));
  if (every((a, b) => a === b)) return `${name} stayed at ${first}`;
  if (every((a, b) => a >= b)) return `${name} fell from ${first} to ${last}`;
  if (every((a, b) => a <= b)) return `${name} rose from ${first} to ${last}`;
  const ends = first === last ? `began and ended at ${first}` : `went from ${first} to ${last}`;
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  const beyond = [lowest < Math.min(first, last) ? `lowest ${lowest}` : "", highest > Math.max(first, last) ? `highest ${highest}` : ""];
  return `${name} ${ends}, ${beyond.filter((word) => word !== "").join(" and ") || "up and down"} in between`;
}
