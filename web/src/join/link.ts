/** What a join link and its code look like, and what the server's answers mean. Pure. */

/** The token of a link: 256 bits in base64url without padding are 43 characters. */
const TOKEN = /^#?([A-Za-z0-9_-]{43})$/;

/** The token in a fragment; `undefined` when there is none or it is not whole. */
export const linkIn = (fragment: string): string | undefined => TOKEN.exec(fragment.trim())?.[1];

/** Six digits, however they were typed ("123 456"); `undefined` when there are not six. */
export function digitsOf(typed: string): string | undefined {
  const digits = typed.replace(/[\s-]/g, "");
  return /^\d{6}$/.test(digits) ? digits : undefined;
}

/** What a tab kept over a reload; `undefined` when it is nothing whole. */
export function readKept(text: string | null): { link: string; once: string } | undefined {
  try {
    const { link, once } = JSON.parse(text ?? "null") as { link?: unknown; once?: unknown };
    return typeof link === "string" && linkIn(link) === link && typeof once === "string" && once !== "" ? { link, once } : undefined;
  } catch {
    return undefined;
  }
}

/** "in", or the id of the words for it. Everything that is wrong with link or code looks the same. */
export function answerTo(status: number): string {
  if (status >= 200 && status < 300) return "in";
  if (status === 409) return "join_elsewhere";
  if (status === 429) return "join_slow";
  return status >= 500 ? "join_offline" : "join_wrong";
}
