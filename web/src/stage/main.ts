/** The client's page: joins the parts. What may move is decided in `machine`, how in `player`. */
import { RoomClock } from "../live/clock";
import { element } from "../live/element";
import { LiveSocket, OVER, WIRE_VERSION } from "../live/socket";
import { startOf } from "../live/timeline";
import { say } from "../live/words";
import type { Ending } from "../wire/Ending";
import type { FromStage } from "../wire/FromStage";
import type { Interruption } from "../wire/Interruption";
import type { Showing } from "../wire/Showing";
import type { StageView } from "../wire/StageView";
import type { ToStage } from "../wire/ToStage";
import { Buzz } from "./buzz";
import { CallLater } from "./call_later";
import { abilities, ThisDevice } from "./device";
import { Dot } from "./dot";
import { TICK } from "./frames";
import { bindHelp } from "./help";
import { admitted, type Effect, type Event, opened, reduce } from "./machine";
import { onceShown } from "./once_shown";
import { Pacer } from "./pacer";
import { speech } from "./parts";
import { Player } from "./player";
import { postEvidence, postLeave } from "./post";
import { isChecking } from "./questions";
import { Renderer } from "./render";
import { Report } from "./report";
import { type Page, pageOf } from "./screen";
import { bindStopping } from "./stopping";
import { Tones } from "./tones";
import { Watchdog } from "./watchdog";

/** How often what is untold is told again, and what is not kept is sent again, ms. */
const AGAIN = 500;
const SEND_AGAIN = 2_000;
/** A set whose beginning lies further back was not seen from its start, ms. */
const TOO_LATE = 500;
/** Without a message for this long the line is given up, ms: once the client was let in beats come four a second, before that one in 5 s. */
const PATIENCE_ADMITTED = 3_000;
const PATIENCE = 12_000;
/** An ended seat may hand facts in for 15 minutes. */
const HAND_IN_WITHIN = 15 * 60_000;
/** The tap that stopped must not also press the button that appears under it, ms. */
const AFTER_STOP = 600;

const byId = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page has no #${id}.`);
  return found;
};

const closeHelp = bindHelp(byId("help") as HTMLDetailsElement, byId("page"));
const clock = new RoomClock();
const watchdog = new Watchdog();
const report = new Report();
const dot = new Dot(byId("dot"));
const pacer = new Pacer(byId("pacer"), byId("tap-left"), byId("tap-right"));
const buzz = new Buzz((pattern) => navigator.vibrate?.(pattern));
const tones = new Tones(
  () => act({ type: "interrupted", cause: "sound_lost" }),
  (ready) => device.soundIs(ready),
);

let state = opened(abilities());
let drawn = 0;
let stoppedAt = -Infinity;
let halting = false;
let handingIn = false;
let frameAsked = false;
let lastShowing: Omit<Showing, "clock"> | undefined;
/** The line has been opened, and no view has come by it. */
let anew = false;
let ticking: ReturnType<typeof setInterval> | undefined;

const device = new ThisDevice(
  byId("field"),
  () => send({ type: "device", device: device.current }),
  () => {
    act({ type: "interrupted", cause: "resized" });
    // At rest in its old place it could lie beyond the edge.
    if (!player.active) dot.hide();
  },
  () => {
    device.learn({ reduced_motion: true });
    act({ type: "reduced-motion" });
  },
);

const player = new Player({
  dot,
  pacer,
  tones,
  buzz,
  clock,
  watchdog,
  device: () => device.current,
  mayBlink: () => state.view?.figure === true,
  onceShown,
  onFact: (set, at, fact) => send({ type: "evidence", facts: [report.add(set, at, fact)] }),
  onShowing: (showing) => {
    lastShowing = showing;
    tellShowing();
  },
  onFinished: () => act({ type: "finished" }),
  onSilence: () => act({ type: "interrupted", cause: "silence" }),
});

const call = new CallLater(document.body.dataset["call"], {
  panel: byId("call"),
  more: byId("call-more"),
  said: byId("call-said"),
  send: (said) => send({ type: "call", ...said }),
  runs: () => player.active,
  sendTonesTo: (output) => tones.sendTo(output),
  unsureOfSides: () => device.current.sides !== null && device.learn({ sides: null }),
});

const renderer = new Renderer(byId("page"), { device, tones, buzz, call, act: pressed });

const socket = new LiveSocket<ToStage, FromStage>({
  path: document.body.dataset["socket"] ?? "/stage/socket",
  hello: () => ({ type: "hello", wire: WIRE_VERSION, device: device.current }),
  drawn: () => drawn,
  onMessage: hear,
  onState: (link, code) => {
    act({ type: "link", state: link, over: code === OVER });
    if (link === "open") {
      anew = true;
      sendReport();
    }
    if (link === "refused") void handIn();
  },
});

/** One event through the machine, its effects, and the screen. */
function act(event: Event): void {
  const [next, effects] = reduce(state, event);
  state = next;
  for (const effect of effects) perform(effect);
  follow();
}

/** A button of the page. */
function pressed(event: Event): void {
  if (event.type === "ready" && performance.now() - stoppedAt < AFTER_STOP) return;
  act(event);
}

function perform(effect: Effect): void {
  const now = performance.now();
  switch (effect.do) {
    case "play":
      document.documentElement.dataset["colours"] = effect.set.plan.comfort.colours;
      return player.play(effect.set, now);
    case "cut":
      return halt(effect.ending, now);
    case "ease":
      return player.ease(effect.ending, now);
    case "send":
      return send(effect.message);
    case "reload":
      return location.reload();
  }
}

/** The page that follows a halt comes a frame after it: the screen stands still only once all that changed in the frame is painted. */
function halt(ending: Ending, now: number): void {
  const moved = player.active;
  player.cut(ending, now);
  dot.hide();
  if (!moved) return;
  halting = true;
  onceShown(() =>
    setTimeout(() => {
      halting = false;
      follow();
    }),
  );
}

/** Brings everything else in line with the state. */
function follow(): void {
  const now = performance.now();
  // What eases to rest has not stopped yet: the words for it come when it has.
  const page: Page = player.active ? { name: "running" } : pageOf(state);
  if (!halting && renderer.show(page)) closeHelp();
  if (!player.active && page.name !== "between") dot.hide();
  if (device.current.checking !== isChecking(state)) device.learn({ checking: isChecking(state) });
  clock.hold(player.active, now);
  socket.patience = admitted(state.view) ? PATIENCE_ADMITTED : PATIENCE;
  drive(player.active);
  if (page.name === "end" || page.name === "refused") {
    device.letGo();
    call.end();
  }
  if (page.name === "end") void handIn();
}

/** Drives the player while something moves. */
function drive(on: boolean): void {
  askForFrame();
  if (on === (ticking !== undefined)) return;
  clearInterval(ticking);
  ticking = on ? setInterval(tick, TICK) : undefined;
}

function tick(): void {
  player.tick(performance.now());
  askForFrame();
  if (!player.active) follow();
}

function askForFrame(): void {
  if (frameAsked || !player.wantsFrame) return;
  frameAsked = true;
  requestAnimationFrame(() => {
    frameAsked = false;
    player.frame(performance.now());
    askForFrame();
  });
}

function hear(message: ToStage, pageNow: number): void {
  switch (message.type) {
    case "beat": {
      clock.onBeat(message, pageNow);
      const left = clock.known ? clock.pageTime(message.sent, pageNow) : pageNow;
      return watchdog.onBeat(left, pageNow, message.desk_silent, message.desk_trip, admitted(state.view));
    }
    case "view":
      return hearView(message, pageNow);
    case "kept":
      return report.kept(message.set, message.seq);
    case "call":
      return call.hear(message);
    case "reload":
      return act({ type: "reload" });
  }
}

function hearView(view: StageView, pageNow: number): void {
  if (state.view && view.epoch > state.view.epoch) {
    clock.restart();
    watchdog.restart();
  }
  act({ type: "view", view, obstacle: obstacle(view, pageNow) });
  // That it came to rest may have been said into a dead line.
  if (anew && admitted(view)) tellShowing();
  anew = false;
  // Drawn is what a frame has shown, not what was put into the document.
  requestAnimationFrame(() => (drawn = state.view?.seq ?? 0));
}

/** Why the view's set could not be shown here if it were to start now. */
function obstacle({ set }: StageView, pageNow: number): Interruption | undefined {
  if (!set) return undefined;
  const start = startOf(set.timeline);
  const late = start === undefined || !clock.known || clock.roomTime(pageNow) > start + TOO_LATE;
  if (document.visibilityState === "hidden" || late) return "hidden";
  if (watchdog.tooSilent(pageNow)) return "silence";
  const { channels, comfort } = set.plan;
  const felt = channels.hands && comfort.vibration && device.current.vibration;
  return channels.eyes || tones.ready || felt ? undefined : "sound_lost";
}

function send(message: FromStage): void {
  socket.send(message);
}

function tellShowing(): void {
  if (lastShowing) send({ type: "showing", ...lastShowing, clock: clock.error(performance.now()) });
}

function sendReport(): void {
  const facts = report.batch();
  if (facts.length > 0 && admitted(state.view)) send({ type: "evidence", facts });
}

/** After the end: what the record does not have yet goes by HTTP, and the line is closed. */
async function handIn(): Promise<void> {
  if (handingIn) return;
  handingIn = true;
  player.settle();
  const until = performance.now() + HAND_IN_WITHIN;
  for (let facts = report.batch(); facts.length > 0 && performance.now() < until; facts = report.batch()) {
    if (await postEvidence(facts)) report.keptAll(facts);
    else await new Promise((later) => setTimeout(later, SEND_AGAIN));
  }
  socket.close();
}

/** The way out: blank at once, whatever the server does. */
async function leave(): Promise<void> {
  if (player.active) act({ type: "stop" });
  tones.cut();
  player.settle();
  socket.close();
  call.end();
  const facts = report.batch();
  document.body.replaceChildren();
  document.body.dataset["page"] = "left";
  // First what the screen showed: once the seat is given up, nothing is taken from it any more.
  if (facts.length > 0) await Promise.race([postEvidence(facts), new Promise((later) => setTimeout(later, 1_000))]);
  if (await postLeave()) location.replace("/left");
  else document.body.append(element("main", {}, ...speech("left_text", "left_next")));
}

bindStopping(byId("stop"), {
  active: () => player.active,
  stop: () => {
    stoppedAt = performance.now();
    tones.cut();
    act({ type: "stop" });
  },
  interrupted: (cause) => act({ type: "interrupted", cause }),
  touched: () => {
    tones.reopen();
    device.regain();
  },
});
byId("leave").addEventListener("click", () => void leave());
byId("lighter").addEventListener("click", () => {
  const lighter = document.documentElement.classList.toggle("lighter");
  byId("lighter").textContent = say(lighter ? "help_darker" : "help_lighter");
});
byId("shift").addEventListener("input", (event) => (tones.shift = Number((event.target as HTMLInputElement).value)));
document.addEventListener("visibilitychange", () => device.regain());
document.addEventListener("fullscreenchange", () => device.learn({ full_screen: document.fullscreenElement !== null }));
addEventListener("pagehide", () => {
  player.settle();
  const facts = report.batch();
  if (facts.length > 0) void postEvidence(facts);
});
setInterval(() => act({ type: "again" }), AGAIN);
setInterval(sendReport, SEND_AGAIN);
follow();
