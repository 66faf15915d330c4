/**
 * Signing in, showing a passkey again, and making passkeys. The page holds one element with the id `passkey` whose
 * `data-passkey` says what for, with one button, a `role=status` line, and perhaps a `#label` field.
 */
import { make, ready, use } from "./ceremony";
import { INCOMPLETE, TOO_OLD, inWords } from "./words";

/** What the button does, by `data-passkey`. @returns where to go */
const doings: Readonly<Record<string, (place: HTMLElement) => Promise<string>>> = {
  signin: (place) => use("/signin", place.dataset.next ?? ""),
  again: (place) => use("/signin/again", place.dataset.next ?? ""),
  enrol: (place) => make("/enrol", { token: location.hash.slice(1) }, label(place)),
  further: (place) => make("/account/passkeys", {}, label(place)),
};

const label = (place: HTMLElement): string => place.querySelector<HTMLInputElement>("#label")?.value ?? "";

function start(place: HTMLElement, button: HTMLButtonElement, status: HTMLElement): void {
  const doing = doings[place.dataset.passkey ?? ""];
  const say = (words: string): void => {
    status.textContent = words;
  };
  if (!doing) return;
  if (!ready()) return say(TOO_OLD);
  if (place.dataset.passkey === "enrol" && location.hash.length < 2) return say(INCOMPLETE);
  button.addEventListener("click", async () => {
    button.disabled = true;
    say("Your browser now asks for the passkey.");
    try {
      location.replace(await doing(place));
    } catch (fault) {
      say(inWords(fault));
      button.disabled = false;
    }
  });
}

const place = document.getElementById("passkey");
const button = place?.querySelector("button");
const status = place?.querySelector<HTMLElement>("[role=status]");
if (place && button && status) start(place, button, status);
