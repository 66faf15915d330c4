// Requests of the desk beside the socket. Nothing here is kept in the browser's storage.
import type { Entry } from "../wire/Entry";
import type { Saved } from "../wire/Saved";
import type { SessionLog } from "../wire/SessionLog";
import { firstError } from "./admission";
import type { Problem } from "./entries";

/** An answer is given up after this long, ms: then the entry reads "not saved". */
const PATIENCE = 4000;

/** What came of a request: the answer's status and its body, when that was JSON. */
export interface Answer {
  status: number;
  body: unknown;
}

async function bodyOf(response: Response): Promise<unknown> {
  if (!(response.headers.get("content-type") ?? "").startsWith("application/json")) return null;
  return response.json();
}

/**
 * One request to this host. Status 0: no answer. A redirect (to the sign-in) reads as 401. Sent again under the same `once`
 * it is done once and has the first answer; the same holds without one where the body itself names what is to be.
 */
export async function ask(method: "GET" | "POST", path: string, body?: unknown, once?: string): Promise<Answer> {
  const given = new AbortController();
  const timer = setTimeout(() => given.abort(), PATIENCE);
  const headers: Record<string, string> = { accept: "application/json" };
  if (body !== undefined) headers["content-type"] = "application/json";
  if (once !== undefined) headers["idempotency-key"] = once;
  try {
    const response = await fetch(path, {
      method,
      headers,
      cache: "no-store",
      redirect: "manual",
      signal: given.signal,
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    if (response.type === "opaqueredirect") return { status: 401, body: null };
    return { status: response.status, body: await bodyOf(response) };
  } catch {
    // Every way to fail here (no network, given up, unreadable answer) means the same: it may have happened or not.
    return { status: 0, body: null };
  } finally {
    clearTimeout(timer);
  }
}

/** What an answer that is no success means for an entry. */
export function problemOf(answer: Answer): Problem {
  if (answer.status === 0) return { kind: "offline" };
  if (answer.status === 401) return { kind: "signed_out" };
  if (answer.status >= 400 && answer.status < 500 && answer.status !== 408 && answer.status !== 429) {
    return { kind: "refused", words: firstError(answer.body) ?? refusedWords(answer.status) };
  }
  return { kind: "server" };
}

function refusedWords(status: number): string {
  if (status === 403 || status === 404) return "this session is not open to you.";
  if (status === 409) return "it does not fit what is in the record.";
  return "the server does not accept it.";
}

/** In words, what came of another request that failed. */
export function failureWords(answer: Answer): string {
  const problem = problemOf(answer);
  switch (problem.kind) {
    case "offline":
      return "No answer from the server, so it is not known whether this was done. Press again: it is done once.";
    case "signed_out":
      return "You are signed out. Sign in again in another tab, then press again.";
    case "server":
      return "The server could not say whether this was done. Press again: it is done once.";
    case "refused":
      return `Not done: ${problem.words}`;
  }
}

export async function saveEntry(session: string, entry: Entry): Promise<Saved | Problem> {
  const answer = await ask("POST", `/sessions/${session}/entries`, entry);
  const body = answer.body as Partial<Saved> | null;
  // Only the server's own word for this very entry counts as saved.
  if (answer.status === 200 && body?.id === entry.id && typeof body.at === "string") return { id: body.id, at: body.at };
  return answer.status === 200 ? { kind: "server" } : problemOf(answer);
}

export async function readLog(session: string): Promise<SessionLog | null> {
  const answer = await ask("GET", `/sessions/${session}/entries`);
  return answer.status === 200 && answer.body !== null ? (answer.body as SessionLog) : null;
}
