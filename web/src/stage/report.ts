/**
 * The facts of this page's sets, kept in memory until the server says they are in the record.
 * Pure: `main` moves them. The same fact sent twice is kept once, so sending again is harmless.
 */
import type { Evidence } from "../wire/Evidence";
import type { Fact } from "../wire/Fact";

/** At most so many facts go into one message. */
export const BATCH = 20;

/** See the head of this file. */
export class Report {
  private facts: Evidence[] = [];
  private next = new Map<string, number>();

  /** Adds what was seen in `set` at room time `at`, ms. */
  add(set: string, at: number, fact: Fact): Evidence {
    const seq = this.next.get(set) ?? 0;
    this.next.set(set, seq + 1);
    const evidence = { set, seq, at, fact };
    this.facts.push(evidence);
    return evidence;
  }

  /** The server has the facts of `set` up to and with `seq`. */
  kept(set: string, seq: number): void {
    this.facts = this.facts.filter((fact) => fact.set !== set || fact.seq > seq);
  }

  /** The server has exactly these. */
  keptAll(facts: readonly Evidence[]): void {
    const had = new Set(facts);
    this.facts = this.facts.filter((fact) => !had.has(fact));
  }

  /** The oldest facts that no answer has named yet, as many as fit into one message. */
  batch(): Evidence[] {
    return this.facts.slice(0, BATCH);
  }
}
