/** The pages of the device check. Each is one sentence and its answers. */
import { element } from "../live/element";
import { CARD_MM, DEFAULT_PX_PER_MM } from "../live/optics";
import { say } from "../live/words";
import { askBuzz, askSound } from "./ask_sound";
import type { Buzz } from "./buzz";
import type { Step } from "./check";
import { type ThisDevice, pxPerMm } from "./device";
import type { Event } from "./machine";
import { answers, button, speech } from "./parts";
import type { Tones } from "./tones";

/** What the pages work with. */
export interface Asking {
  readonly device: ThisDevice;
  readonly tones: Tones;
  readonly buzz: Buzz;
  act(event: Event): void;
}

/** Eye to screen for each answer, mm. Common practice, no source. */
const DISTANCES = { near: 350, arm: 600, far: 850 } as const;

/** The content of one question. */
export function ask(step: Step, asking: Asking): HTMLElement[] {
  const next = () => asking.act({ type: "answered", step });
  return PAGES[step](asking, next);
}

type Page = (asking: Asking, next: () => void) => HTMLElement[];

const PAGES: Record<Step, Page> = {
  start: ({ act }, next) => [
    ...speech("check_start_heading", "check_start_text"),
    answers(
      button("check_start_go", next, "main"),
      button("check_start_skip", () => act({ type: "skip-all" })),
    ),
  ],
  settle: askSettle,
  card: askCard,
  distance: ({ device }, next) => {
    const choose = (distance_mm: number) => () => {
      device.learn({ distance_mm });
      next();
    };
    return [
      ...speech("check_distance_heading", "check_distance_text"),
      answers(...(["near", "arm", "far"] as const).map((far) => button(`check_distance_${far}`, choose(DISTANCES[far]), "choice")), button("skip", next)),
    ];
  },
  motion: ({ device, act }) => {
    const answer = (motion: "welcome" | "declined") => () => {
      act({ type: "answered", step: "motion", motion });
      device.learn({ reduced_motion: motion === "declined" });
    };
    return [
      ...speech("check_motion_heading", "check_motion_text"),
      answers(button("check_motion_yes", answer("welcome"), "choice"), button("check_motion_no", answer("declined"), "choice")),
    ];
  },
  sound: askSound,
  sides: askSound,
  buzz: askBuzz,
  awake: askAwake,
  full: ({ device }, next) => [
    ...speech("check_full_heading", "check_full_text"),
    answers(
      button("check_full_go", () => void device.fillScreen().then(next), "main"),
      button("skip", next),
    ),
  ],
};

/** What makes the device ready, as one page of words: nothing here is asked. */
function askSettle({ device }: Asking, next: () => void): HTMLElement[] {
  const { handheld, current } = device;
  const upright = current.height_px > current.width_px;
  const words = [...(handheld ? ["check_settle_prop"] : []), ...(handheld && upright ? ["check_settle_turn"] : []), "check_settle_power", "check_settle_quiet"];
  const list = element("ul", {}, ...words.map((id) => element("li", {}, say(id))));
  return [...speech("check_settle_heading"), list, answers(button("check_settle_go", next, "main"))];
}

/** The short side of a card is held to a box: it fits on every phone, the long side does not. */
function askCard({ device }: Asking, next: () => void): HTMLElement[] {
  const [least, most] = [2.4, 7.2].map((scale) => Math.round(scale * CARD_MM.height)) as [number, number];
  const room = Math.min(most, device.current.width_px - 40);
  const start = Math.min(room, CARD_MM.height * DEFAULT_PX_PER_MM);
  const box = element("div", { class: "card", "aria-hidden": "true" });
  const slider = element("input", { type: "range", id: "card", min: least, max: room, step: 1, value: Math.round(start) });
  const fit = () => (box.style.width = `${slider.value}px`);
  slider.addEventListener("input", fit);
  fit();
  const done = () => {
    device.learn({ px_per_mm: pxPerMm(Number(slider.value)) });
    next();
  };
  return [
    ...speech("check_card_heading", "check_card_text"),
    box,
    element("label", { for: "card" }, say("check_card_slider")),
    slider,
    answers(button("check_card_go", done, "main"), button("skip", next)),
  ];
}

function askAwake({ device }: Asking, next: () => void): HTMLElement[] {
  const text = element("p", { role: "status" }, say("check_awake_text"));
  const choice = answers(
    button("check_awake_go", () => void keep(), "main"),
    button("skip", next),
  );
  const keep = async () => {
    if (await device.keepAwake()) return next();
    text.textContent = say("check_awake_refused");
    choice.replaceChildren(button("check_next", next, "main"));
  };
  return [...speech("check_awake_heading"), text, choice];
}
