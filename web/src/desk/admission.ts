// Admission: what must be confirmed before the client is let in, and how the server's answers are read. Pure.

/** The form as filled in. */
export interface Admission {
  location: string;
  /** The clinician ticks that the client has just said this address; a filled-in text alone confirms nothing. */
  confirmed: boolean;
  callBack: string;
  alone: boolean;
}

export type AdmissionField = "location" | "confirmed" | "call_back" | "private";
export type FieldErrors = Partial<Record<AdmissionField, string>>;

export const MOST_LOCATION = 300;
export const MOST_CALL_BACK = 40;

/** What is missing, field by field. Empty: it may be sent. */
export function checkAdmission(form: Admission): FieldErrors {
  const errors: FieldErrors = {};
  const location = form.location.trim();
  if (location === "") errors.location = "Ask where the client is now and write it down.";
  else if ([...location].length > MOST_LOCATION) errors.location = `At most ${MOST_LOCATION} characters.`;
  if (!form.confirmed) errors.confirmed = "Ask for the address aloud, then tick this.";
  if (!/\d/.test(form.callBack)) errors.call_back = "Write the number to call when the line breaks.";
  else if ([...form.callBack.trim()].length > MOST_CALL_BACK) errors.call_back = `At most ${MOST_CALL_BACK} characters.`;
  if (!form.alone) errors.private = "Settle this with the client, then tick it.";
  return errors;
}

/** The request's body. It names the device at the door, so that nobody else is let in. */
export const admissionBody = (form: Admission, seat: string): { location: string; call_back: string; private: boolean; seat: string } => ({
  location: form.location.trim(),
  call_back: form.callBack.trim(),
  private: form.alone,
  seat,
});

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

/** The messages of a 422 answer `{"errors": {field: message}}`, for the fields this form has; others are left out. */
export function readFieldErrors(body: unknown): FieldErrors {
  const errors = isRecord(body) && isRecord(body.errors) ? body.errors : {};
  const fields: AdmissionField[] = ["location", "confirmed", "call_back", "private"];
  return Object.fromEntries(fields.flatMap((field) => (typeof errors[field] === "string" ? [[field, errors[field]]] : [])));
}

/** The first message of a 422 answer, or null when it has none. */
export function firstError(body: unknown): string | null {
  const errors = isRecord(body) && isRecord(body.errors) ? Object.values(body.errors) : [];
  return errors.find((message): message is string => typeof message === "string") ?? null;
}

/** A text field of an answer, or null. */
export function readText(body: unknown, field: string): string | null {
  const value = isRecord(body) ? body[field] : null;
  return typeof value === "string" ? value : null;
}
