/**
 * Where a link to forms leads. Its token is read from the fragment and taken off the address at once; nothing is sent before the client
 * taps, so a program that follows links spends nothing.
 */
import { linkIn } from "../join/link";
import { say } from "../live/words";

const go = document.getElementById("go") as HTMLButtonElement;
const message = document.getElementById("message") as HTMLElement;
let link: string | undefined;

function tell(words: string, isTrouble: boolean): void {
  message.className = isTrouble ? "error" : "soft";
  message.textContent = words;
}

function takeLink(): void {
  const found = linkIn(location.hash);
  // The address is what others see, what a screenshot keeps, and what Back returns to.
  if (location.hash !== "") history.replaceState(null, "", location.pathname);
  if (found === undefined && link !== undefined) return;
  link = found;
  tell(link === undefined ? say("open_no_link") : "", link === undefined);
}

/** What the answer of the server means, as the id of its words; undefined: it is open. */
async function asked(link: string): Promise<string | undefined> {
  try {
    const response = await fetch("/q", { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify({ link }) });
    if (response.ok) return undefined;
    if (response.status === 429) return "open_slow";
    return response.status >= 500 ? "open_offline" : "open_wrong";
  } catch {
    // Not reached at all: told in words, and the client may tap again.
    return "open_offline";
  }
}

async function open(): Promise<void> {
  if (link === undefined) {
    tell(say("open_no_link"), true);
    return;
  }
  go.disabled = true;
  tell(say("open_busy"), false);
  const trouble = await asked(link);
  go.disabled = false;
  if (trouble === undefined) location.assign("/q/forms");
  else tell(say(trouble), true);
}

go.addEventListener("click", () => void open());
addEventListener("hashchange", takeLink);
takeLink();
