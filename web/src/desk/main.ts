// The desk's page: sockets, keys and clicks in, drawing out. All rules are in the reducer.
import { copied } from "../clipboard";
import { RoomClock } from "../live/clock";
import { HANDED_OVER, LiveSocket, OUTDATED, OVER, WIRE_VERSION, type SocketState } from "../live/socket";
import type { Entry } from "../wire/Entry";
import type { FromDesk } from "../wire/FromDesk";
import type { Preset } from "../wire/Preset";
import type { ToDesk } from "../wire/ToDesk";
import { AdmissionPanel } from "./admission_panel";
import { AssessPanel } from "./assess_panel";
import { buttonAction } from "./buttons";
import { CallLater } from "./call_later";
import { Closing } from "./closing_later";
import { TurnPanel } from "./turn";
import { part, text } from "./dom";
import { hasUnsaved } from "./entries";
import { keyAction, swallowsRelease, type KeyState, type Place } from "./keys";
import { freshDesk, isBusy, type Action, type Command, type DeskEvent, type DeskState } from "./model";
import { Preview } from "./preview";
import { step } from "./reducer";
import { render } from "./render";
import { offeredRate } from "./rhythm";
import { readLog, saveEntry } from "./server";
import { isUnknown } from "./status";
import { clockMinute, writeTimesWith } from "./words";

const TICK = 250;
/** A button says so long what it has done, ms. */
const SAID_FOR = 3000;
const desk = part("desk-state");
const words = part<HTMLInputElement>("words");
const session = desk.dataset.session ?? "";
writeTimesWith(desk.dataset.hours === "12" ? 12 : 24);

/** As the page came: the state goes before it. */
const title = document.title;
const wide = matchMedia("(min-width: 66rem)");

const clock = new RoomClock();
const presets = JSON.parse(part("presets").dataset.presets ?? "[]") as Preset[];
const resources = JSON.parse(part("resources").dataset.resources ?? "[]") as string[];
const begunMs = desk.dataset.begunMs;
let state: DeskState = {
  ...freshDesk(performance.now()),
  presets,
  resources,
  wide: wide.matches,
  begun: begunMs === undefined ? null : performance.now() - Number(begunMs),
  usualTime: { minutes: Number(desk.dataset.minutes ?? 50), reserve: Number(desk.dataset.reserve ?? 10) },
};
let drawn = 0;
// Reduced motion hides the preview until it is asked for.
if (matchMedia("(prefers-reduced-motion: reduce)").matches) state = { ...state, preview: false };

function roomNow(pageNow: number): number | null {
  return clock.known ? clock.roomTime(pageNow) : null;
}

const preview = new Preview(part("preview"), (pageNow) => {
  const room = roomNow(pageNow);
  const { view } = state;
  return view === null || room === null || !state.preview || view.state === "closed" || isUnknown(state, pageNow) ? null : { view, room };
});

const admission = new AdmissionPanel(session, ({ location, callBack, caution }) => {
  desk.dataset.callBack = callBack;
  text(part("card-location"), location);
  text(part("who-place"), `at ${location}`);
  for (const name of ["card-call-back", "who-call-back"]) text(part(name), callBack);
  text(part("card-confirmed"), `confirmed ${clockMinute(new Date())}${caution === "" ? "" : `. ${caution}`}`);
  draw();
});

const closing = new Closing(desk.dataset.closing ?? "", session, () =>
  happen({ kind: "action", action: { kind: "lower", shown: "log" }, id: crypto.randomUUID(), words: words.value }),
);
const call = new CallLater(document.querySelector<HTMLElement>('[data-part="face"]'), {
  send: (said) => void socket.send({ type: "call", ...said }),
  runs: () => isBusy(state),
  view: () => state.view,
  act: (action) => act(action),
});
const turn = new TurnPanel(session, () => {
  if (state.view?.state === "closed") return "The session is closed.";
  if (isBusy(state)) return "A set runs. Turn to another target between sets.";
  return leavesSomething() ? "Something is not saved yet. Wait until it is." : "";
});
const assessment = new AssessPanel((words) => happen({ kind: "assessed", words }));

function draw(): void {
  const now = performance.now();
  const callBack = desk.dataset.callBack ?? "";
  render(state, {
    now,
    room: roomNow(now),
    clock: clock.error(now),
    callBack,
    phoneUse: desk.dataset.phoneUse ?? "",
    page: title,
  });
  admission.follow(state.view?.seat, { atTheDoor: state.view?.seat_id ?? null, asking: state.view?.asking ?? null });
  preview.draw();
  call.draw();
  // A page nobody can see has drawn nothing: the client must not be told that the desk knows.
  if (document.visibilityState === "visible") drawn = state.view?.seq ?? 0;
}

function happen(event: DeskEvent): void {
  const now = performance.now();
  const epoch = state.view?.epoch;
  const { lower } = state;
  const next = step(state, event, now);
  state = next.state;
  if (epoch !== undefined && state.view?.epoch !== epoch) clock.restart();
  clock.hold(isBusy(state), now);
  socket.patience = isBusy(state) ? 3000 : 12000;
  for (const command of next.commands) carryOut(command);
  if (state.lower === "closing" && lower !== "closing") void closing.show();
  if (state.view?.state === "closed") closing.over();
  draw();
}

function carryOut(command: Command): void {
  switch (command.kind) {
    case "send": {
      // What cannot go out stays pending in the reducer, which says so and repeats what is safe to repeat.
      socket.send(command.message);
      return;
    }
    case "save":
      return void save(command.entry);
    case "load_log":
      return void loadLog();
    case "focus":
      // What lay over the field has to be gone first.
      draw();
      if (command.on === "assessment") return assessment.focus();
      return command.on === "words" ? words.focus() : desk.focus({ preventScroll: true });
    case "fill_words":
      words.value = command.words;
      return;
  }
}

async function save(entry: Entry): Promise<void> {
  const answer = await saveEntry(session, entry);
  happen("kind" in answer ? { kind: "not_kept", id: entry.id, problem: answer } : { kind: "kept", kept: answer });
}

async function loadLog(): Promise<void> {
  const log = await readLog(session);
  happen(log === null ? { kind: "log_failed" } : { kind: "log", log });
}

function lineState(line: SocketState, code?: number): void {
  // The socket reports its first try before it is even assigned.
  if (line === "connecting") return;
  const over = code === OVER;
  // A page that is too old is told to reload, and that is all that is wrong with it.
  const sentAway = line !== "refused" || over || code === OUTDATED ? null : code === HANDED_OVER ? "handed_over" : "signed_out";
  if (sentAway || over) call.end();
  happen({ kind: "line", open: line === "open", sentAway, over });
}

function connect(): LiveSocket<ToDesk, FromDesk> {
  return new LiveSocket<ToDesk, FromDesk>({
    path: `/sessions/${session}/desk/socket`,
    hello: () => ({ type: "hello", wire: WIRE_VERSION }),
    drawn: () => drawn,
    onMessage: (message, pageNow) => {
      if (message.type === "call") return call.hear(message);
      if (message.type === "beat") clock.onBeat(message, pageNow);
      happen({ kind: "heard", message });
    },
    onState: lineState,
  });
}
let socket = connect();

/** Coming back to this tab is often coming back from signing in: a line that the server closed is worth another try. */
function cameBack(): void {
  happen({ kind: "page_focus", here: true });
  if (!state.sentAway) return;
  socket.close();
  socket = connect();
}

function act(action: Action): void {
  if (action.kind === "closing_digit") return closing.digit(action.value);
  if (action.kind === "closing_enter") return closing.enter();
  if (action.kind === "closing_move") return closing.move(action.by);
  if (action.kind === "to_admission") return admission.lead();
  if (action.kind === "mute") return call.mute();
  if (action.kind === "turn") return void turn.press(action.value);
  happen({ kind: "action", action, id: crypto.randomUUID(), words: words.value });
}
const keyState = (): KeyState => ({
  armed: state.armed?.scale ?? null,
  panel: state.lower,
  shortcuts: state.shortcuts,
  tapped: offeredRate(state.taps, performance.now()) !== null,
});

function placeOf(target: EventTarget | null): Place {
  if (!(target instanceof HTMLElement)) return "keys";
  if (target === words) return "words";
  if (target.matches("input, textarea, select") || target.isContentEditable) return "field";
  return target.matches("button, a, summary") ? "button" : "keys";
}

// On the window and in the capture phase: nothing in the page can keep Escape from here.
addEventListener(
  "keydown",
  (event) => {
    const press = {
      key: event.key,
      shift: event.shiftKey,
      modified: event.ctrlKey || event.altKey || event.metaKey,
      repeat: event.repeat,
      composing: event.isComposing,
    };
    const outcome = keyAction(press, placeOf(event.target), keyState());
    if (outcome.prevent) event.preventDefault();
    if (outcome.action !== null) act(outcome.action);
  },
  { capture: true },
);

addEventListener(
  "keyup",
  (event) => {
    if (swallowsRelease(event.key, placeOf(event.target), keyState())) event.preventDefault();
  },
  { capture: true },
);

/** Copies the number to call, hidden or not, and says so only when it was done. */
async function copyNumber(): Promise<void> {
  if (!(await copied(desk.dataset.callBack ?? ""))) return happen({ kind: "notice", words: "The browser did not allow copying: the number stands above." });
  text(part("copy-number"), "Copied");
  setTimeout(() => text(part("copy-number"), "Copy"), SAID_FOR);
}
part("copy-number").addEventListener("click", () => void copyNumber());

document.addEventListener("click", (event) => {
  const button = event.target instanceof Element ? event.target.closest<HTMLElement>("[data-act]") : null;
  const action = button === null ? null : buttonAction(button.dataset, event.shiftKey);
  if (action !== null) act(action);
});

const leavesSomething = (): boolean => hasUnsaved(state.queue) || words.value.trim() !== "" || assessment.unsaved || closing.unsaved;
words.addEventListener("input", () => happen({ kind: "words_typed", empty: words.value === "" }));
addEventListener("focus", cameBack);
addEventListener("blur", () => happen({ kind: "page_focus", here: false }));
document.addEventListener("visibilitychange", draw);
wide.addEventListener("change", () => happen({ kind: "window", wide: wide.matches }));
addEventListener("beforeunload", (event) => {
  if (!leavesSomething()) return;
  event.preventDefault();
  // Browsers before 2024 ask only when this is set as well.
  event.returnValue = true;
});

setInterval(() => {
  happen({ kind: "page_focus", here: document.hasFocus() });
  happen({ kind: "tick" });
}, TICK);
happen({ kind: "tick" });
