// The panel for joining: link, code, admission and the second device. What was typed stays whatever happens.
import { admissionBody, checkAdmission, readFieldErrors, readText, type Admission, type AdmissionField, type FieldErrors } from "./admission";
import { copied } from "../clipboard";
import type { SeatState } from "../wire/SeatState";
import { attribute, part, text } from "./dom";
import { codeIn, codeWords, whyGone, type SpokenCode } from "./spoken_code";
import { ask, failureWords } from "./server";
import { clockMinute } from "./words";

const field = (id: string): HTMLInputElement => {
  const found = document.getElementById(id);
  if (!(found instanceof HTMLInputElement)) throw new Error(`The page has no field named ${id}.`);
  return found;
};
const INPUTS: Record<AdmissionField, string> = { location: "location", confirmed: "location-confirmed", call_back: "call-back", private: "private" };
const NAMES = Object.keys(INPUTS) as AdmissionField[];

function filledIn(): Admission {
  return {
    location: field("location").value,
    confirmed: field("location-confirmed").checked,
    callBack: field("call-back").value,
    alone: field("private").checked,
  };
}

/** Writes `words` beside a field, or clears what stood there. */
function showError(name: AdmissionField, words: string | undefined): void {
  const place = document.querySelector(`[data-error="${name}"]`);
  if (place !== null) text(place, words ?? "");
  attribute(field(INPUTS[name]), "aria-invalid", words === undefined ? null : "true");
}

/** Writes each message beside its field and leads to the first. */
function showErrors(errors: FieldErrors): void {
  for (const name of NAMES) showError(name, errors[name]);
  const first = NAMES.find((name) => errors[name] !== undefined);
  if (first !== undefined) field(INPUTS[first]).focus();
}

/** The devices of the room's view, by the ids that the record has for them. */
export interface Devices {
  atTheDoor: string | null;
  asking: string | null;
}

/** Binds the panel. `onAdmitted` hears what was confirmed, once the server has taken it. */
export class AdmissionPanel {
  private seat: SeatState | undefined;
  private devices: Devices = { atTheDoor: null, asking: null };
  /** Of a request that has had no answer yet: pressed again, it is the same request. */
  private readonly once = new Map<string, string>();
  /** The code that is shown, as far as this page made it. */
  private code: SpokenCode | null = null;

  constructor(
    private readonly session: string,
    private readonly onAdmitted: (admitted: { location: string; callBack: string; caution: string }) => void,
  ) {
    part("admission").addEventListener("submit", (event) => {
      event.preventDefault();
      void this.admit();
    });
    for (const button of document.querySelectorAll<HTMLElement>("[data-join]")) button.addEventListener("click", () => void this.press(button));
    for (const button of document.querySelectorAll<HTMLElement>("[data-seat]"))
      button.addEventListener("click", () => void this.decide(button.dataset.seat ?? ""));
    for (const name of NAMES) field(INPUTS[name]).addEventListener("input", () => showError(name, undefined));
    // Another address needs another confirmation.
    field("location").addEventListener("input", () => (field("location-confirmed").checked = false));
  }

  /** What was confirmed of one client counts for nobody who comes after. */
  follow(seat: SeatState | undefined, devices: Devices): void {
    if (devices.atTheDoor !== this.devices.atTheDoor) this.forgetConfirmed();
    const came = (now: string | null, before: string | null): boolean => now !== null && now !== before;
    const used = came(devices.atTheDoor, this.devices.atTheDoor) || came(devices.asking, this.devices.asking);
    this.devices = devices;
    this.lookAtCode(used);
    if (seat === undefined || seat === this.seat) return;
    if (this.seat === "admitted" || seat === "empty" || seat === "left") this.forgetConfirmed();
    this.seat = seat;
  }

  /** A code that is of no use is not left to be said. */
  private lookAtCode(used: boolean): void {
    const gone = this.code === null ? null : whyGone(this.code, used, Date.now());
    if (gone === null) return;
    this.code = null;
    text(part("join-code"), "");
    text(part("join-status"), gone);
  }

  private forgetConfirmed(): void {
    for (const id of ["location-confirmed", "private"]) field(id).checked = false;
    text(part("admission-status"), "");
  }

  /** The focus goes to what is to be confirmed next; when all is, to the button. */
  lead(): void {
    const { location, confirmed, callBack, alone } = filledIn();
    const last = document.querySelector<HTMLElement>('[data-join="last"]');
    const next = [
      location.trim() === "" ? (last ?? field("location")) : null,
      confirmed ? null : field("location-confirmed"),
      callBack.trim() === "" ? field("call-back") : null,
      alone ? null : field("private"),
    ].find((one) => one !== null);
    (next ?? part<HTMLElement>("admit")).focus();
  }

  private async admit(): Promise<void> {
    const form = filledIn();
    const errors = checkAdmission(form);
    showErrors(errors);
    text(part("admission-status"), Object.keys(errors).length === 0 ? "Asking the server." : "Not admitted yet: see the fields above.");
    if (Object.keys(errors).length > 0) return;
    const { atTheDoor } = this.devices;
    if (atTheDoor === null) return text(part("admission-status"), "Nobody has used the link and the code yet, so there is nobody to admit.");
    const body = admissionBody(form, atTheDoor);
    const answer = await ask("POST", `/sessions/${this.session}/admit`, body);
    if (answer.status >= 200 && answer.status < 300) {
      const caution = readText(answer.body, "caution") ?? "";
      text(part("admission-status"), `Admitted.${caution === "" ? "" : ` ${caution}`}`);
      return this.onAdmitted({ location: body.location, callBack: body.call_back, caution });
    }
    const refused = answer.status === 422 ? readFieldErrors(answer.body) : {};
    showErrors(refused);
    text(part("admission-status"), Object.keys(refused).length === 0 ? failureWords(answer) : "Not admitted yet: see the fields above.");
  }

  private async press(button: HTMLElement): Promise<void> {
    switch (button.dataset.join) {
      case "link":
        return this.renew("link");
      case "code":
        return this.renew("code");
      case "copy":
        return this.copy();
      case "last":
        field("location").value = button.dataset.location ?? "";
        field("location-confirmed").checked = false;
        return field("location-confirmed").focus();
    }
  }

  /** A new link comes with a new code; a new code leaves the link. */
  private async renew(what: "link" | "code"): Promise<void> {
    const once = this.once.get(what) ?? crypto.randomUUID();
    this.once.set(what, once);
    const answer = await ask("POST", `/sessions/${this.session}/${what}`, undefined, once);
    if (answer.status > 0 && answer.status < 500) this.once.clear();
    const code = readText(answer.body, "code");
    const link = readText(answer.body, "link");
    const made = codeIn(code, readText(answer.body, "code_until"));
    const complete = answer.status >= 200 && answer.status < 300 && made !== null && (what === "code" || link !== null);
    // Made by an earlier press whose answer was lost, and of no use by now: this press makes another.
    if (complete && made.until <= Date.now()) return this.renew(what);
    if (!complete) return text(part("join-status"), failureWords(answer));
    this.code = made;
    text(part("join-code"), made.digits);
    if (link !== null) part<HTMLInputElement>("join-link").value = link;
    text(part("join-status"), `${what === "link" ? "Send the link. " : ""}${codeWords(made, (at) => clockMinute(new Date(at)))}`);
  }

  private async copy(): Promise<void> {
    const input = part<HTMLInputElement>("join-link");
    if (input.value === "") return text(part("join-status"), "There is no link yet. Make one first.");
    if (await copied(input.value)) return text(part("join-status"), "Link copied.");
    input.select();
    text(part("join-status"), "The browser did not allow copying. The link is selected: copy it by hand.");
  }

  private async decide(decision: string): Promise<void> {
    // The device is the one that is shown: another that came meanwhile stays.
    const seat = decision === "remove" ? this.devices.atTheDoor : this.devices.asking;
    const answer = await ask("POST", `/sessions/${this.session}/seat`, { decision, seat });
    const done = answer.status >= 200 && answer.status < 300;
    if (decision !== "remove") return text(part("seat-status"), done ? "" : failureWords(answer));
    // Link and code stand there again once nobody waits.
    text(part("admission-status"), done ? "" : failureWords(answer));
    if (done) text(part("join-status"), "Removed. To come back, the client needs a new code.");
  }
}
