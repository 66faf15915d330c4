// The assessment on one screen: seven fields in their order, kept in one go. What was typed stays whatever happens.
import { readText } from "./admission";
import { attribute, part, text } from "./dom";
import { ask, failureWords } from "./server";
import { clockMinute } from "./words";

/** In the order of the assessment (clinical reference 1.4). */
const FIELDS = ["picture", "negative_belief", "positive_belief", "voc", "emotions", "sud", "body_location"] as const;
/** What stands on the card of the target. */
const ON_CARD: readonly string[] = ["picture", "negative_belief", "positive_belief", "emotions", "body_location"];
type Field = (typeof FIELDS)[number];

/** Binds the form, if the session has a target. `onKept` hears that it is in the record. */
export class AssessPanel {
  private readonly form = document.querySelector<HTMLFormElement>('[data-part="assess"]');
  /** Of what has had no answer yet: pressed again, it is the same request. */
  private once: string | null = null;

  constructor(private readonly onKept: (words: string) => void) {
    this.form?.addEventListener("submit", (event) => {
      event.preventDefault();
      void this.keep();
    });
    this.form?.addEventListener("input", (event) => {
      // Another body is another request.
      this.once = null;
      if (this.form !== null) this.form.dataset.typed = "";
      if (event.target instanceof HTMLElement) this.showError((event.target as HTMLInputElement).name as Field, "");
    });
  }

  /** Leaving the page would lose something. */
  get unsaved(): boolean {
    return this.form?.dataset.typed !== undefined;
  }

  /** To the first field. */
  focus(): void {
    this.field("picture")?.focus();
  }

  private field(name: Field): HTMLInputElement | HTMLTextAreaElement | null {
    const found = this.form?.elements.namedItem(name);
    return found instanceof HTMLInputElement || found instanceof HTMLTextAreaElement ? found : null;
  }

  private showError(name: Field, words: string): void {
    const place = this.form?.querySelector(`[data-assess="${name}"]`);
    if (place) text(place, words);
    const field = this.field(name);
    if (field !== null) attribute(field, "aria-invalid", words === "" ? null : "true");
  }

  private async keep(): Promise<void> {
    const { form } = this;
    if (form === null) return;
    const status = part("assess-status");
    text(status, "Asking the server.");
    const values = Object.fromEntries(FIELDS.map((name) => [name, this.field(name)?.value ?? ""]));
    this.once ??= crypto.randomUUID();
    const answer = await ask("POST", `/targets/${form.dataset.target}/assessment`, { ...values, version: Number(form.dataset.version) }, this.once);
    if (answer.status > 0 && answer.status < 500) this.once = null;
    const version = (answer.body as { version?: unknown } | null)?.version;
    if (answer.status === 200 && typeof version === "number") return this.kept(form, version, values);
    const first = this.showErrors(answer.status === 422 ? answer.body : null);
    text(status, first ? "Not kept yet: see the fields above." : failureWords(answer));
  }

  private kept(form: HTMLFormElement, version: number, values: Record<string, string>): void {
    form.dataset.version = String(version);
    delete form.dataset.typed;
    for (const name of FIELDS) this.showError(name, "");
    for (const name of ["sud", "voc"] as const) {
      const field = this.field(name);
      if (field !== null) field.value = "";
    }
    for (const name of ON_CARD) showOnCard(name, values[name] ?? "");
    const words = `Assessment kept ${clockMinute(new Date())}.`;
    text(part("assess-status"), words);
    this.onKept(words);
  }

  /** Writes each message beside its field and leads to the first; whether there was one. */
  private showErrors(body: unknown): boolean {
    const errors = (body as { errors?: unknown } | null)?.errors;
    const wrong = FIELDS.filter((name) => readText(errors, name) !== null);
    for (const name of FIELDS) this.showError(name, readText(errors, name) ?? "");
    const first = wrong[0];
    if (first !== undefined) this.field(first)?.focus();
    return first !== undefined;
  }
}

function showOnCard(name: string, words: string): void {
  const place = document.querySelector<HTMLElement>(`[data-card="${name}"]`);
  if (place === null) return;
  text(place, words);
  const line = place.parentElement;
  if (line !== null) line.hidden = words === "";
}
