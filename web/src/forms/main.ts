/** Forms that a client fills in: one question at a time, or all on the page; what was chosen is kept as they go. */
import { say } from "../live/words";
import { after, firstOpen, type Given, Keeper, type Standing, type Went, whole } from "./steps";

/** A request that takes longer counts as not reached. */
const PATIENCE_MS = 10_000;

const byId = <T extends HTMLElement>(id: string): T => document.getElementById(id) as T;
const form = byId<HTMLFormElement>("questions");
const [before, place, kept] = [byId("before"), byId("place"), byId("kept")];
const how = document.getElementById("how") as HTMLDetailsElement | null;
const [back, next, send, view] = ["back", "next", "send", "view"].map((id) => byId<HTMLButtonElement>(id)) as [
  HTMLButtonElement,
  HTMLButtonElement,
  HTMLButtonElement,
  HTMLButtonElement,
];
const questions = [...form.querySelectorAll<HTMLFieldSetElement>("fieldset")];
const chosen = (question: HTMLFieldSetElement): Given => question.querySelector<HTMLInputElement>("input:checked")?.value ?? null;
const given = (): Given[] => questions.map(chosen);
const field = (name: string): HTMLInputElement => form.querySelector<HTMLInputElement>(`input[name=${name}]`) as HTMLInputElement;

let sendings = Number(form.dataset["sendings"]);
let at = firstOpen(given());
let single = document.getElementById("notice") === null;
/** What is read before the first question stands until the client has gone on from the one they came to. */
let moved = false;

async function keep(): Promise<Went> {
  sendings += 1;
  const [measure, asking, page, wording] = ["measure", "asking", "page", "wording"].map((name) => field(name).value);
  const body = JSON.stringify({ measure, asking, page, wording, was: Number(field("was").value), sending: sendings, answers: given() });
  const headers = { "content-type": "application/json" };
  try {
    const signal = AbortSignal.timeout(PATIENCE_MS);
    const response = await fetch("/q/draft", { method: "POST", headers, body, keepalive: true, signal });
    if (response.ok) {
      field("was").value = String(((await response.json()) as { version: number }).version);
      return "kept";
    }
    if (response.status === 409) return "elsewhere";
    return response.status === 401 ? "over" : "again";
  } catch {
    // Not reached: said beside the questions, and tried again.
    return "again";
  }
}

function tell(standing: Standing): void {
  kept.textContent = say(`forms_${standing}`);
  send.disabled = standing === "elsewhere" || standing === "over";
}

const keeper = new Keeper(keep, tell, (run, milliseconds) => {
  const timer = setTimeout(run, milliseconds);
  return () => clearTimeout(timer);
});

function show(passedOver = false): void {
  const all = given();
  const last = questions.length - 1;
  for (const [index, question] of questions.entries()) question.hidden = single && index !== at;
  before.hidden = single && moved;
  place.hidden = !single;
  const where = say("forms_place", { at: at + 1, of: questions.length });
  const more = passedOver ? say("forms_missing") : whole(all) && at === last ? say("forms_ready") : "";
  place.textContent = more === "" ? where : `${where}. ${more}`;
  back.hidden = !single || at === 0;
  next.hidden = !single || (at === last && whole(all));
  send.hidden = single && !whole(all);
  view.hidden = false;
  view.textContent = say(single ? "forms_all" : "forms_one");
}

function go(to: number): void {
  const passedOver = to < at && at === questions.length - 1 && chosen(questions[to] as HTMLFieldSetElement) === null;
  if (!moved && how !== null) how.open = false;
  moved = true;
  at = Math.max(0, Math.min(to, questions.length - 1));
  show(passedOver);
  const question = questions[at];
  if (question === undefined) return;
  const input = question.querySelector<HTMLInputElement>("input:checked") ?? question.querySelector<HTMLInputElement>("input");
  input?.focus({ preventScroll: true });
  scrollTo({ top: 0 });
}

/** What was chosen is kept before it is handed in: a line that is gone then loses nothing. */
async function handIn(): Promise<void> {
  if (send.disabled) return;
  send.disabled = true;
  const standing = await keeper.settled();
  if (standing === "kept") return form.submit();
  tell(standing);
  if (standing === "unkept") kept.textContent = say("forms_offline");
}

// Arrow keys choose as they pass: only a tap, a click or Space and Enter go on to the next question. Enter never hands in.
let byArrow = false;
form.addEventListener("keydown", (event) => {
  byArrow = event.key.startsWith("Arrow");
  if (event.key !== "Enter" || !(event.target instanceof HTMLInputElement)) return;
  event.preventDefault();
  if (!single || chosen(questions[at] as HTMLFieldSetElement) === null) return;
  if (whole(given()) && at === questions.length - 1) send.focus();
  else go(after(at, given()));
});
form.addEventListener("pointerdown", () => {
  byArrow = false;
});
form.addEventListener("change", (event) => {
  const index = questions.findIndex((question) => question.contains(event.target as Node));
  if (index < 0) return;
  keeper.changed();
  const to = after(index, given());
  if (single && !byArrow && to !== index) go(to);
  else show();
});
form.addEventListener("submit", (event) => {
  event.preventDefault();
  void handIn();
});
back.addEventListener("click", () => go(at - 1));
next.addEventListener("click", () => go(after(at, given())));
view.addEventListener("click", () => {
  single = !single;
  show();
});
addEventListener("pagehide", () => keeper.leaving());
show();
if (!single) (form.querySelector<HTMLInputElement>("fieldset[aria-describedby] input") ?? byId("notice")).focus();
