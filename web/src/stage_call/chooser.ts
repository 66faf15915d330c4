/** A choice among devices of one kind; nothing where there is none to make. */
import { element } from "../live/element";
import { say } from "../live/words";

/** `words`: what is chosen; `now`: what is in use. */
export function chooser(words: string, found: readonly MediaDeviceInfo[], now: string | undefined, choose: (id: string) => void): HTMLElement[] {
  if (found.length < 2) return [];
  const select = element(
    "select",
    { id: words },
    ...found.map((device) => element("option", { value: device.deviceId, selected: device.deviceId === now }, device.label)),
  );
  select.addEventListener("change", () => choose(select.value));
  return [element("label", { for: words }, say(words)), select];
}
