// Rooms and plans for the tests beside the pure modules. Invented; not part of any page.
import { usual } from "../live/comfort.fixture";
import { nothing } from "../live/needs.fixture";
import type { DeskView } from "../wire/DeskView";
import type { Plan } from "../wire/Plan";
import type { SetView } from "../wire/SetView";
import type { Showing } from "../wire/Showing";

export function aPlan(changes: Partial<Plan> = {}): Plan {
  return {
    rate: 1,
    width: 18,
    dot: 1,
    path: "across",
    length: { kind: "cycles", cycles: 24 },
    channels: { eyes: true, ears: false, hands: false },
    comfort: usual,
    purpose: "processing",
    ...changes,
  };
}

export function aSet(changes: Partial<SetView> = {}): SetView {
  const segments = [{ starts_at: 1000, lasts: 24000, phase: 0, rate_from: 1, rate_to: 1 }];
  return { id: "set-1", number: 1, plan: aPlan(), timeline: { segments }, ended: null, ...changes };
}

export function aView(changes: Partial<DeskView> = {}): DeskView {
  return {
    epoch: 1,
    seq: 1,
    state: "ready",
    needs: nothing,
    refused: null,
    holds: [],
    plan: aPlan(),
    set: null,
    in_control: true,
    other_desk: false,
    seat: "admitted",
    seat_asked_for: false,
    seat_id: "device",
    asking: null,
    record_refuses: false,
    record_waits: false,
    clock_set: 0,
    stage_here: true,
    watch: { seconds: 5, off: null },
    stage_heard: 1000,
    device: {
      width_px: 1280,
      height_px: 720,
      px_per_mm: 3.8,
      distance_mm: 600,
      reduced_motion: false,
      sound: true,
      sides: true,
      vibration: false,
      wake_lock: true,
      full_screen: true,
      checking: false,
    },
    widest: 30,
    asked_width: 18,
    eyes_locked: false,
    hard_end: null,
    steadying: null,
    pad: null,
    rated: null,
    longer: false,
    ...changes,
  };
}

export function aShowing(changes: Partial<Showing> = {}): Showing {
  return { set: "set-1", moving: true, at: 13000, phase: 12, rate: 1, width: 18, clock: { spread: 1, bound: 20 }, ...changes };
}
