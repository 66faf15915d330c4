/** Cameras, microphones and outputs to choose from. */
import type { OwnDevice } from "../wire/OwnDevice";

/** Whether something of it is on its way. */
export const joined = (device: OwnDevice | undefined): boolean => device === "on" || device === "muted";

/** What can be chosen, as the browser tells it: of these kinds, and only once it may be used. */
export const KINDS = ["videoinput", "audioinput", "audiooutput"] as const;
export type Kind = (typeof KINDS)[number];

/** The devices of each kind that have a name; none where the browser tells nothing. */
export async function devices(): Promise<Readonly<Record<Kind, readonly MediaDeviceInfo[]>>> {
  const all = (await navigator.mediaDevices?.enumerateDevices().catch(() => [])) ?? [];
  const of = (kind: Kind) => all.filter((device) => device.kind === kind && device.label !== "");
  return { videoinput: of("videoinput"), audioinput: of("audioinput"), audiooutput: of("audiooutput") };
}

/** Which device a track comes from. */
export const deviceOf = (track: MediaStreamTrack | null): string | undefined => track?.getSettings().deviceId;

/** Which output an element plays by. */
export const outputOf = (player: HTMLMediaElement): string => (player as { sinkId?: string }).sinkId || "default";

/** Sends the sound of an element there. An output that is gone meanwhile changes nothing: `outputOf` says which is in use. */
export async function sendSoundTo(player: HTMLMediaElement, id: string): Promise<void> {
  const { setSinkId } = player as { setSinkId?: (id: string) => Promise<void> };
  await setSinkId?.call(player, id).catch(() => undefined);
}

/** Whether this browser lets the output of an element be chosen. */
export const choosesOutput = (): boolean => "setSinkId" in HTMLMediaElement.prototype;

/** The same of tones too: they come by an `AudioContext`, whose output not every browser that has the other lets be chosen. */
export const choosesOutputOfTones = (): boolean => choosesOutput() && "setSinkId" in AudioContext.prototype;
