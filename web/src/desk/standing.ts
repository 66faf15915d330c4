// Which entries count: the one rule, as leeward_core::standing has it. Both are bound to tests/reference/ratings.json.

/** What the rule needs to know of an entry. */
export interface Link {
  id: string;
  replaces: string | null;
  /** False: what it replaces is taken back. */
  says: boolean;
}

/** An entry that counts, with the first of its chain: when it was asked. */
export interface Stands<L extends Link> {
  entry: L;
  first: L;
}

/** For each id the entry that corrects it. Of two that name the same one the first kept does; the record refuses the second. */
export function corrections<L extends Link>(kept: readonly L[]): Map<string, L> {
  const next = new Map<string, L>();
  for (const link of kept) if (link.replaces !== null && !next.has(link.replaces)) next.set(link.replaces, link);
  return next;
}

/** The entries that count, in the order they were asked. `kept` is in order of keeping. */
export function standing<L extends Link>(kept: readonly L[]): Stands<L>[] {
  const ids = new Set(kept.map((link) => link.id));
  const next = corrections(kept);
  return kept
    .filter((link) => link.replaces === null || !ids.has(link.replaces))
    .map((first) => {
      let entry = first;
      for (let later = next.get(entry.id); later !== undefined; later = next.get(entry.id)) entry = later;
      return { entry, first };
    })
    .filter(({ entry }) => entry.says);
}
