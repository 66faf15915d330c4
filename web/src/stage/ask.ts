/** The pages of the device check. Each is one question and its answers, with the way back and the way past it below. */
import { element } from "../live/element";
import { CARD_MM, DEFAULT_PX_PER_MM } from "../live/optics";
import { say } from "../live/words";
import { askBuzz, askSound } from "./ask_sound";
import type { Buzz } from "./buzz";
import type { CallLater } from "./call_later";
import type { Step } from "./check";
import { type ThisDevice, pxPerMm } from "./device";
import type { Event } from "./machine";
import { answers, button, choice, speech } from "./parts";
import type { Question } from "./screen";
import type { Tones } from "./tones";

/** What the pages work with. */
export interface Asking {
  readonly device: ThisDevice;
  readonly tones: Tones;
  readonly buzz: Buzz;
  readonly call: CallLater;
  act(event: Event): void;
}

/** Eye to screen for each answer, mm. Common practice, no source. */
const DISTANCES = { near: 350, arm: 600, far: 850 } as const;

/** The content of one question. */
export function ask(question: Question, asking: Asking): HTMLElement[] {
  const { step, place, given } = question;
  const next = () => asking.act({ type: "answered", step });
  const page = PAGES[step](asking, next, given);
  const where = place && element("p", { class: "place", id: "place" }, say("check_place", place));
  if (where) page[0]?.setAttribute("aria-describedby", "place"); // a reader hears both: the heading has the focus
  return [...(where ? [where] : []), ...page, ...(step === "start" ? [] : ways(question, asking))];
}

/** The way back and the way past a question, in the same place on every page. */
function ways({ step, back, given }: Question, { act, device, tones }: Asking): HTMLElement[] {
  const go = (type: "back" | "skipped") => () => {
    tones.cut();
    // The desk had its doubts, and nobody has taken them away.
    if (step === "sides" && device.current.sides) device.learn({ sides: null });
    act({ type, step });
  };
  const buttons = [...(back ? [button("back", go("back"))] : []), button("skip", go("skipped"))];
  return [...(given ? [element("p", {}, say("check_given"))] : []), element("div", { class: "ways" }, ...buttons)];
}

/** `given`: it was answered before. */
type Page = (asking: Asking, next: () => void, given: boolean) => HTMLElement[];

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
    const said = device.current.distance_mm;
    return [
      ...speech("check_distance_heading", "check_distance_text"),
      answers(...(["near", "arm", "far"] as const).map((far) => choice(`check_distance_${far}`, choose(DISTANCES[far]), said === DISTANCES[far]))),
    ];
  },
  motion: ({ device, act }, _, given) => {
    const answer = (motion: "welcome" | "declined") => () => {
      act({ type: "answered", step: "motion", motion });
      device.learn({ reduced_motion: motion === "declined" });
    };
    const declined = device.current.reduced_motion;
    return [
      ...speech("check_motion_heading", "check_motion_text", ...(given ? [] : ["check_motion_skip"])),
      answers(choice("check_motion_yes", answer("welcome"), given && !declined), choice("check_motion_no", answer("declined"), given && declined)),
    ];
  },
  call: ({ call }, next) => call.ask(next),
  sound: askSound,
  sides: askSound,
  buzz: askBuzz,
  awake: askAwake,
  full: ({ device }, next) => [
    ...speech("check_full_heading", "check_full_text"),
    answers(button("check_full_go", () => void device.fillScreen().then(next), "main")),
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
  const start = Math.min(room, CARD_MM.height * (device.current.px_per_mm ?? DEFAULT_PX_PER_MM));
  const box = element("div", { class: "card", "aria-hidden": "true" });
  const slider = element("input", { type: "range", id: "card", min: least, max: room, step: 1, value: Math.round(start) });
  const fit = () => (box.style.width = `${slider.value}px`);
  slider.addEventListener("input", fit);
  fit();
  const done = () => {
    // As wide as it was shown: beside Help and Leave there may be less room than the slider would have.
    device.learn({ px_per_mm: pxPerMm(box.getBoundingClientRect().width) });
    next();
  };
  return [
    ...speech("check_card_heading", "check_card_text"),
    box,
    element("label", { for: "card" }, say("check_card_slider")),
    slider,
    answers(button("check_card_go", done, "main")),
  ];
}

function askAwake({ device }: Asking, next: () => void): HTMLElement[] {
  const text = element("p", { role: "status" }, say("check_awake_text"));
  const choice = answers(button("check_awake_go", () => void keep(), "main"));
  const keep = async () => {
    if (await device.keepAwake()) return next();
    text.textContent = say("check_awake_refused");
    choice.replaceChildren(button("check_next", next, "main"));
  };
  return [...speech("check_awake_heading"), text, choice];
}
