/** The page's few requests by HTTP: for when the socket is closed, and for the way out. */
import type { Evidence } from "../wire/Evidence";

/** A way out waits no longer than this for an answer, ms. */
const LEAVE_WITHIN = 4_000;

/** Hands facts in after the end. `keepalive` lets it outlive the page. @returns whether they are in the record. */
export async function postEvidence(facts: readonly Evidence[]): Promise<boolean> {
  return post("/stage/evidence", JSON.stringify({ facts }));
}

/** Gives the seat up. @returns whether the server heard it in time. */
export async function postLeave(): Promise<boolean> {
  return post("/stage/leave", undefined, LEAVE_WITHIN);
}

async function post(path: string, body?: string, within?: number): Promise<boolean> {
  const patience = new AbortController();
  const timer = within === undefined ? undefined : setTimeout(() => patience.abort(), within);
  const init: RequestInit = { method: "POST", keepalive: true, redirect: "manual", signal: patience.signal };
  if (body !== undefined) Object.assign(init, { body, headers: { "content-type": "application/json" } });
  try {
    const answer = await fetch(path, init);
    // A redirect to the blank page is as good an answer as an empty one.
    return answer.ok || answer.type === "opaqueredirect";
  } catch {
    // Not reached: the caller keeps the facts, or leaves without the server.
    return false;
  } finally {
    clearTimeout(timer);
  }
}
