/**
 * Where a link leads. The link's token is read from the fragment and taken off the address at
 * once; nothing is sent before the client taps Join.
 */
import { say } from "../live/words";
import { bindHelp } from "../stage/help";
import { answerTo, digitsOf, linkIn, readKept } from "./link";

const byId = <T extends HTMLElement>(id: string): T => document.getElementById(id) as T;
const code = byId<HTMLInputElement>("code");
const go = byId<HTMLButtonElement>("go");
const message = byId("message");
const once = byId<HTMLInputElement>("once");

let link: string | undefined;

/** What this tab keeps over a reload: the link, and the key under which a seat was asked for, so that asking again gives the same one. */
const KEPT = "leeward-join";

function keep(link: string): void {
  sessionStorage.setItem(KEPT, JSON.stringify({ link, once: once.value }));
}

function forget(): void {
  sessionStorage.removeItem(KEPT);
}

/** The link that this tab was opened with before it was reloaded. */
function keptLink(): string | undefined {
  const kept = readKept(sessionStorage.getItem(KEPT));
  if (kept === undefined) return undefined;
  once.value = kept.once;
  return kept.link;
}

function takeLink(): void {
  const found = linkIn(location.hash) ?? (link === undefined ? keptLink() : undefined);
  // The address is what others see, what a screenshot keeps, and what Back returns to.
  if (location.hash !== "") history.replaceState(null, "", location.pathname);
  if (found === undefined && link !== undefined) return;
  link = found;
  if (link !== undefined) keep(link);
  tell(link === undefined ? "join_no_link" : undefined);
}

function tell(id: string | undefined): void {
  message.textContent = id === undefined ? "" : say(id);
  code.toggleAttribute("aria-invalid", id === "join_short" || id === "join_wrong");
}

async function join(): Promise<void> {
  if (link === undefined) return tell("join_no_link");
  const digits = digitsOf(code.value);
  if (digits === undefined) {
    tell("join_short");
    return code.focus();
  }
  go.disabled = true;
  tell("join_busy");
  const answer = await post(link, digits);
  go.disabled = false;
  if (answer === "in") {
    forget();
    location.assign("/stage");
  } else {
    // A seat that was refused stays refused: the next try asks for another.
    if (answer === "join_wrong") {
      once.value = crypto.randomUUID();
      keep(link);
    }
    tell(answer);
  }
}

async function post(link: string, digits: string): Promise<string> {
  try {
    const body = JSON.stringify({ link, code: digits, once: once.value });
    const response = await fetch("/join", { method: "POST", headers: { "content-type": "application/json" }, body });
    return answerTo(response.status);
  } catch {
    // Not reached at all: told in words, and the client may tap again.
    return "join_offline";
  }
}

byId("join").addEventListener("submit", (event) => {
  event.preventDefault();
  void join();
});
byId("leave").addEventListener("click", () => {
  link = undefined;
  forget();
  document.body.replaceChildren();
  // Blank at once; without the server it stays so, since going there would show the browser's error.
  fetch("/left").then(
    () => location.replace("/left"),
    () => undefined,
  );
});
bindHelp(byId<HTMLDetailsElement>("help"), byId("page"));
addEventListener("hashchange", takeLink);
takeLink();
