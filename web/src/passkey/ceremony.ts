/** Both passkey ceremonies: the portal asks, the device answers, the portal decides. */
import { Refused, TOO_OLD } from "./words";

/** What `…/begin` answers. */
interface Begun {
  /** To be sent back with the device's answer. */
  ceremony: string;
  publicKey: unknown;
}

/** What `…/finish` answers: where to go, a path of this portal. */
interface Finished {
  next: string;
}

/** Sends JSON and reads JSON. @throws Refused with the portal's own words; TypeError when it is not reached. */
async function post<T>(path: string, body: unknown): Promise<T> {
  const answer = await fetch(path, {
    method: "POST",
    headers: { "content-type": "application/json", accept: "application/json" },
    body: JSON.stringify(body),
  });
  const read: unknown = await answer.json().catch(() => null);
  if (answer.ok && read !== null) return read as T;
  const told = read as { title?: string; advice?: string } | null;
  throw new Refused(told?.advice ?? "The portal did not answer as it should. Nothing has changed. Try again in a moment.");
}

/** Whether this browser has all that the ceremonies need. */
export function ready(): boolean {
  return (
    typeof PublicKeyCredential === "function" &&
    typeof PublicKeyCredential.parseCreationOptionsFromJSON === "function" &&
    typeof PublicKeyCredential.parseRequestOptionsFromJSON === "function" &&
    typeof PublicKeyCredential.prototype.toJSON === "function"
  );
}

function answered(credential: Credential | null): PublicKeyCredential {
  if (credential instanceof PublicKeyCredential) return credential;
  throw new Refused(TOO_OLD);
}

/**
 * Uses a passkey.
 * @param path "/signin", or "/signin/again" to show it once more
 * @returns where to go
 */
export async function use(path: string, next: string): Promise<string> {
  const { ceremony, publicKey } = await post<Begun>(`${path}/begin`, {});
  const options = PublicKeyCredential.parseRequestOptionsFromJSON(publicKey as PublicKeyCredentialRequestOptionsJSON);
  const credential = answered(await navigator.credentials.get({ publicKey: options }));
  return (await post<Finished>(`${path}/finish`, { ceremony, credential: credential.toJSON(), next })).next;
}

/**
 * Makes a passkey.
 * @param path "/enrol" or "/account/passkeys"
 * @param begin what `begin` wants: the token of an invitation, or nothing
 * @param label the passkey's name in its owner's list
 * @returns where to go
 */
export async function make(path: string, begin: object, label: string): Promise<string> {
  const { ceremony, publicKey } = await post<Begun>(`${path}/begin`, begin);
  const options = PublicKeyCredential.parseCreationOptionsFromJSON(publicKey as PublicKeyCredentialCreationOptionsJSON);
  const credential = answered(await navigator.credentials.create({ publicKey: options }));
  return (await post<Finished>(`${path}/finish`, { ceremony, credential: credential.toJSON(), label })).next;
}
