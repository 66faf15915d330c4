/** The pages of the device check. Each is one sentence and its answers. */
import { element } from "../live/element";
import { CARD_MM, DEFAULT_PX_PER_MM } from "../live/optics";
import { say } from "../live/words";
import type { Step } from "./check";
import { type ThisDevice, pxPerMm } from "./device";
import type { Event } from "./machine";
import type { Tones } from "./tones";

/** What the pages work with. */
export interface Asking {
  readonly device: ThisDevice;
  readonly tones: Tones;
  act(event: Event): void;
}

/** Eye to screen for each answer, mm. Common practice, no source. */
const DISTANCES = { near: 350, arm: 600, far: 850 } as const;

/** A button with words of the catalogue. */
export const button = (id: string, onclick: () => void, kind = ""): HTMLElement =>
  element("button", { type: "button", class: kind, onclick }, say(id));

/** A heading and sentences, by their ids. */
export const speech = (heading: string, ...texts: string[]): HTMLElement[] => [
  element("h1", { tabindex: -1 }, say(heading)),
  ...texts.map((id) => element("p", {}, say(id))),
];

/** The content of one question. */
export function ask(step: Step, asking: Asking): HTMLElement[] {
  const next = () => asking.act({ type: "answered", step });
  return PAGES[step](asking, next);
}

type Page = (asking: Asking, next: () => void) => HTMLElement[];

const answers = (...buttons: HTMLElement[]): HTMLElement => element("div", { class: "answers" }, ...buttons);

const PAGES: Record<Step, Page> = {
  start: ({ act }, next) => [
    ...speech("check_start_heading", "check_start_text"),
    answers(button("check_start_go", next, "main"), button("check_start_skip", () => act({ type: "skip-all" }))),
  ],
  card: askCard,
  distance: ({ device }, next) => {
    const choose = (distance_mm: number) => () => {
      device.learn({ distance_mm });
      next();
    };
    return [
      ...speech("check_distance_heading", "check_distance_text"),
      answers(
        ...(["near", "arm", "far"] as const).map((far) => button(`check_distance_${far}`, choose(DISTANCES[far]), "choice")),
        button("skip", next),
      ),
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
  awake: askAwake,
  full: ({ device }, next) => [
    ...speech("check_full_heading", "check_full_text"),
    answers(button("check_full_go", () => void device.fillScreen().then(next), "main"), button("skip", next)),
  ],
};

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

function askSound({ device, tones }: Asking, next: () => void): HTMLElement[] {
  const answered = (sound: boolean) => () => {
    tones.cut();
    device.learn({ sound });
    next();
  };
  const text = element("p", { role: "status" }, say("check_sound_text"));
  const choice = answers(button("check_sound_go", () => void play(), "main"), button("skip", answered(false)));
  const play = async () => {
    try {
      await tones.open();
      tones.test();
    } catch {
      text.textContent = say("check_sound_failed");
      choice.replaceChildren(button("check_next", answered(false), "main"));
      return;
    }
    text.textContent = say("check_sound_asked");
    choice.replaceChildren(
      button("check_sound_yes", answered(true), "main"),
      button("check_sound_again", () => tones.test()),
      button("skip", answered(false)),
    );
  };
  return [...speech("check_sound_heading"), text, choice];
}

function askAwake({ device }: Asking, next: () => void): HTMLElement[] {
  const text = element("p", { role: "status" }, say("check_awake_text"));
  const choice = answers(button("check_awake_go", () => void keep(), "main"), button("skip", next));
  const keep = async () => {
    if (await device.keepAwake()) return next();
    text.textContent = say("check_awake_refused");
    choice.replaceChildren(button("check_next", next, "main"));
  };
  return [...speech("check_awake_heading"), text, choice];
}
