/** Forms that a client fills in: one question at a time, or all on the page; what was chosen is kept as they go. */
import { say } from "../live/words";
import { after, firstOpen, type Given, Keeper, whole } from "./steps";

const byId = <T extends HTMLElement>(id: string): T => document.getElementById(id) as T;
const form = byId<HTMLFormElement>("questions");
const [before, place, kept] = [byId("before"), byId("place"), byId("kept")];
const [back, next, send, view] = ["back", "next", "send", "view"].map((id) => byId<HTMLButtonElement>(id)) as [
  HTMLButtonElement,
  HTMLButtonElement,
  HTMLButtonElement,
  HTMLButtonElement,
];
const questions = [...form.querySelectorAll<HTMLFieldSetElement>("fieldset")];
const chosen = (question: HTMLFieldSetElement): Given => question.querySelector<HTMLInputElement>("input:checked")?.value ?? null;
const given = (): Given[] => questions.map(chosen);

const AGAIN_MS = 3000;
let version = Number(form.dataset.version);
let at = firstOpen(given());
let single = form.querySelector(".error") === null;

async function keep(): Promise<number | null | undefined> {
  const measure = form.querySelector<HTMLInputElement>("input[name=measure]")?.value;
  const body = JSON.stringify({ measure, draft: form.dataset.draft, was: version, answers: given() });
  try {
    const response = await fetch("/q/draft", { method: "POST", headers: { "content-type": "application/json" }, body });
    if (response.ok) {
      version = ((await response.json()) as { version: number }).version;
      return version;
    }
    return response.status >= 500 || response.status === 429 ? undefined : null;
  } catch {
    // Not reached: said beside the questions, and tried again.
    return undefined;
  }
}

const keeper = new Keeper(
  keep,
  (how) => {
    kept.textContent = say(`forms_${how}`);
    if (how === "elsewhere") send.disabled = true;
  },
  (retry) => setTimeout(retry, AGAIN_MS),
);

function show(): void {
  const all = given();
  for (const [index, question] of questions.entries()) question.hidden = single && index !== at;
  before.hidden = single && at > 0;
  place.hidden = !single;
  const where = say("forms_place", { at: at + 1, of: questions.length });
  place.textContent = whole(all) && at === questions.length - 1 ? `${where}. ${say("forms_ready")}` : where;
  back.hidden = !single || at === 0;
  next.hidden = !single || at === questions.length - 1;
  send.hidden = single && !whole(all);
  view.hidden = false;
  view.textContent = say(single ? "forms_all" : "forms_one");
}

function go(to: number): void {
  at = Math.max(0, Math.min(to, questions.length - 1));
  show();
  const question = questions[at];
  if (question === undefined) return;
  const input = question.querySelector<HTMLInputElement>("input:checked") ?? question.querySelector<HTMLInputElement>("input");
  input?.focus({ preventScroll: true });
  scrollTo({ top: 0 });
}

// Arrow keys choose as they pass: only a tap, a click or Space and Enter go on to the next question.
let byArrow = false;
form.addEventListener("keydown", (event) => {
  byArrow = event.key.startsWith("Arrow");
  if (event.key !== "Enter" || !single || !(event.target instanceof HTMLInputElement)) return;
  event.preventDefault();
  if (whole(given()) && at === questions.length - 1) form.requestSubmit(send);
  else if (chosen(questions[at] as HTMLFieldSetElement) !== null) go(at + 1);
});
form.addEventListener("pointerdown", () => {
  byArrow = false;
});
form.addEventListener("change", (event) => {
  const index = questions.findIndex((question) => question.contains(event.target as Node));
  if (index < 0) return;
  void keeper.changed();
  if (single && !byArrow) go(after(index, questions.length));
  else show();
});
back.addEventListener("click", () => go(at - 1));
next.addEventListener("click", () => go(at + 1));
view.addEventListener("click", () => {
  single = !single;
  show();
});
show();
