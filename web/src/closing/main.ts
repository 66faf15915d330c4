// The closing at the desk, a script of its own: draws its lines, keeps what was typed as a draft, and closes. What is asked is in closing.ts.
import { readText } from "../desk/admission";
import { attribute, make, part, text } from "../desk/dom";
import { ask, failureWords } from "../desk/server";
import { choose, digit, emptyLines, lines, neighbour, openLines, opened, put, refused, STEPS, type Closing, type Form, type Line, type Offer } from "./closing";

/** A draft is kept so long after the last key, ms. */
const DRAFT_AFTER = 1000;
/** When no answer came, the same draft is sent again after so long, ms. */
const AGAIN_AFTER = 5000;
/** The key that ended a line must not press the button that it led to, ms. */
const NOT_BEFORE = 600;

const isOffer = (body: unknown): body is Offer => typeof body === "object" && body !== null && "form" in body && "kinds" in body;
const isRecord = (body: unknown): body is Record<string, unknown> => typeof body === "object" && body !== null;

/** See the head of this file. `onClosed` hears that the record has it. */
export class ClosingPanel {
  private closing: Closing | null = null;
  private draft = 0;
  /** What was sent and not answered yet: it is sent again as it was, so that the server can find it. */
  private sent: { form: Form; draft: number } | null = null;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private unkept = false;
  private once: string | null = null;
  private mayClose = 0;
  private busy = false;

  constructor(
    private readonly session: string,
    private readonly onClosed: () => void,
  ) {
    part("close-now").addEventListener("click", () => void this.close());
  }

  /** Leaving the page now would lose something. */
  get unsaved(): boolean {
    return this.unkept;
  }

  /** The panel has come to the front: what the record says is read anew, unless something is being typed. */
  async show(): Promise<void> {
    if (this.unkept || this.busy) return this.render();
    this.say("The record is being read.");
    const answer = await ask("GET", `/sessions/${this.session}/closing`);
    if (answer.status !== 200 || !isOffer(answer.body)) return this.say(`${failureWords(answer)} The closing list in a tab of its own works too.`);
    this.closing = opened(answer.body);
    this.draft = answer.body.draft;
    this.render();
  }

  /** A digit while the panel shows. */
  digit(value: number): void {
    const next = this.closing === null ? null : digit(this.closing, value);
    if (next === null) return this.say("This number means nothing here. Enter goes to the field, where there is one.");
    this.take(next);
  }

  /** To what is to be typed next; when nothing is open, to the button that closes. */
  enter(): void {
    const field = part("closing-list").querySelector<HTMLElement>("li[aria-current] :is(input, textarea)");
    if (field === null) part("close-now").focus();
    else field.focus();
  }

  /** To the next line, or the one before: those too that may stay empty. */
  move(by: 1 | -1): void {
    const name = this.closing === null ? null : neighbour(this.closing, by);
    if (name === null || this.closing === null) return;
    this.closing = { ...this.closing, chosen: name };
    this.render();
    this.enter();
  }

  private take(next: Closing): void {
    this.closing = next;
    this.changed();
    this.render();
    const current = lines(next).find((line) => line.current);
    if (current === undefined || (current.text !== "" && current.choices.length === 0)) this.enter();
  }

  private changed(): void {
    this.unkept = true;
    this.once = null;
    this.keepIn(DRAFT_AFTER);
  }

  private keepIn(delay: number): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.keepDraft(), delay);
  }

  private async keepDraft(): Promise<void> {
    const { closing } = this;
    if (closing === null || this.busy) return;
    this.sent ??= { form: closing.form, draft: this.draft };
    const { sent } = this;
    const answer = await ask("POST", `/sessions/${this.session}/closing/draft`, sent);
    // Sent twice, and answered before.
    if (this.sent !== sent) return;
    const version = isRecord(answer.body) ? answer.body.draft : undefined;
    if (answer.status === 0 || answer.status >= 500) this.keepIn(AGAIN_AFTER);
    else this.sent = null;
    if (answer.status !== 200 || typeof version !== "number") return this.say(`What you typed is on this page only. ${failureWords(answer)}`);
    this.draft = version;
    // Something was typed meanwhile: that has a draft of its own to come.
    if (this.closing?.form === sent.form) this.unkept = false;
    else this.keepIn(DRAFT_AFTER);
    this.sayOpen();
  }

  private async close(): Promise<void> {
    const { closing } = this;
    if (closing === null || this.busy || performance.now() < this.mayClose) return;
    const open = lines(closing).find((line) => line.open);
    if (open !== undefined) return this.say(`Still open: ${open.label}.`);
    this.busy = true;
    clearTimeout(this.timer);
    this.say("Asking the server.");
    this.once ??= crypto.randomUUID();
    const answer = await ask("POST", `/sessions/${this.session}/closing`, closing.form, this.once);
    this.busy = false;
    if (answer.status > 0 && answer.status < 500) this.once = null;
    if (answer.status === 200 && isRecord(answer.body) && answer.body.closed === true) return this.closed();
    const errors = isRecord(answer.body) && isRecord(answer.body.errors) ? (answer.body.errors as Record<string, string>) : null;
    if (errors === null) return this.say(failureWords(answer));
    this.closing = refused(closing, errors, recordNow(answer.body));
    this.render();
    this.say(answer.status === 409 ? "Not closed: the record has changed. Look at what it says now, then close again." : "Not closed yet: see what is marked.");
  }

  /** The session is closed, maybe elsewhere: what is typed here and not kept stays in sight. */
  over(): void {
    if (this.closing === null || this.busy) return;
    if (!this.unkept) return this.closed();
    clearTimeout(this.timer);
    this.say("The session was closed elsewhere. What you typed here is on this page only: copy what is missing to the session's note.");
  }

  private closed(): void {
    this.closing = null;
    this.unkept = false;
    part("closing-list").replaceChildren();
    this.say("The session is closed.");
    this.onClosed();
  }

  private say(words: string): void {
    text(part("closing-status"), words);
  }

  private sayOpen(): void {
    if (this.closing === null) return;
    const open = openLines(this.closing);
    const kept = this.unkept ? "" : " What you typed is kept.";
    const risk = this.closing.offer.short ? "Risk was said to be present: the safety plan (') comes first. " : "";
    const empty = emptyLines(this.closing);
    const left = empty.length === 0 ? "" : ` Empty: ${empty.join(", ")} (\u2191).`;
    this.say(risk + (open === 0 ? `Nothing is open: Enter leads to the button.${left}${kept}` : `One key a line; ${open} open.${kept}`));
  }

  private render(): void {
    const { closing } = this;
    if (closing === null) return;
    const all = lines(closing);
    part("closing-list").replaceChildren(
      ...STEPS.flatMap((name, at) =>
        this.step(
          name,
          all.filter((line) => line.step === at + 1),
        ),
      ),
    );
    part("closing-list").querySelector("[aria-current]")?.scrollIntoView({ block: "nearest" });
    attribute(part("close-now"), "aria-disabled", all.some((line) => line.open) ? "true" : null);
    if (!all.some((line) => line.open)) this.mayClose = performance.now() + NOT_BEFORE;
    this.sayOpen();
  }

  private step(name: string, own: readonly Line[]): HTMLElement[] {
    const list = make("ol", "", { role: "list" });
    list.append(...own.map((line) => this.row(line)));
    return own.length === 0 ? [] : [make("h3", name), list];
  }

  private row(line: Line): HTMLElement {
    const item = make("li", "", line.current ? { "aria-current": "step" } : {});
    const button = make("button", "", { type: "button", class: "matter" });
    button.append(make("span", line.label), make("b", line.said === "" ? (line.open ? "open" : "empty") : line.said));
    if (line.open || line.error !== "") button.dataset.holds = "";
    button.addEventListener("click", () => this.pick(line.name));
    item.append(button);
    if (line.error !== "") item.append(make("p", line.error, { class: "error", id: `closing-${line.name}-error` }));
    if (line.current) item.append(make("p", line.why, { class: "hint" }), this.choices(line), ...this.field(line));
    return item;
  }

  private pick(name: string): void {
    if (this.closing === null) return;
    this.closing = choose(this.closing, name);
    this.render();
    this.enter();
  }

  private choices(line: Line): HTMLElement {
    const group = make("div", "", { class: "answers", role: "group", "aria-label": line.label });
    group.append(
      ...line.choices.map(([, words], at) => {
        const button = make("button", words, { type: "button", "aria-pressed": String(words === line.said) });
        button.append(" ", make("kbd", String(at + 1)));
        button.addEventListener("click", () => this.digit(at + 1));
        return button;
      }),
    );
    return group;
  }

  private field(line: Line): HTMLElement[] {
    if (line.text === "") return [];
    const given = {
      "aria-label": line.label,
      autocomplete: "off",
      ...(line.error === "" ? {} : { "aria-invalid": "true", "aria-describedby": `closing-${line.name}-error` }),
    };
    const field: HTMLInputElement | HTMLTextAreaElement = line.text === "line" ? make("input", "", given) : make("textarea", "", { ...given, rows: "3" });
    field.value = line.said;
    field.addEventListener("input", () => {
      if (this.closing === null) return;
      this.closing = { ...put(this.closing, line.name, field.value), chosen: line.name };
      this.changed();
    });
    field.addEventListener("keydown", (event) => {
      if (!(event instanceof KeyboardEvent) || event.isComposing || line.text === "lines") return;
      const by = ({ ArrowUp: -1, ArrowDown: 1 } as const)[event.key];
      if (by === undefined && event.key !== "Enter") return;
      event.preventDefault();
      if (by !== undefined) this.move(by);
      else if (this.closing !== null) this.take({ ...this.closing, chosen: null });
    });
    return [field];
  }
}

/** What the record says now of what a closing is sent against. */
function recordNow(body: unknown): Form {
  const [version, was] = [readText(body, "version"), readText(body, "target_was")];
  return { ...(version === null ? {} : { version }), ...(was === null ? {} : { target_was: was }) };
}
