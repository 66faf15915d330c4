// The time of the appointment: how long it is, what is kept for closing, and what to say as that comes nearer. Pure. It stops nothing.
import { standing, written } from "./log";
import type { Appointment, DeskState } from "./model";

/** What can be said by one digit: two usual lengths, then more and less of each part (fifty and ninety minutes: clinical reference 1.7, source 20). */
export const TIME_CHOICES: readonly (readonly [string, (now: Appointment) => Appointment])[] = [
  ["50 min", (now) => ({ ...now, minutes: 50 })],
  ["90 min", (now) => ({ ...now, minutes: 90 })],
  ["5 more", (now) => ({ ...now, minutes: Math.min(240, now.minutes + 5) })],
  ["5 less", (now) => ({ ...now, minutes: Math.max(now.reserve + 5, 10, now.minutes - 5) })],
  ["closing 5 more", (now) => ({ ...now, reserve: Math.min(60, now.minutes - 5, now.reserve + 5) })],
  ["closing 5 less", (now) => ({ ...now, reserve: Math.max(0, now.reserve - 5) })],
];

/** As it was said for this hour, else as usual. */
export function appointment(state: DeskState): Appointment {
  const said = standing(written(state.log, state.queue)).flatMap(({ value }) =>
    value.kind === "time" ? [{ minutes: value.minutes, reserve: value.reserve }] : [],
  );
  return said.at(-1) ?? state.usualTime;
}

export const appointmentWords = ({ minutes, reserve }: Appointment): string => `${minutes} min, the last ${reserve} for closing`;

const MINUTE = 60_000;

/** Until closing begins, ms; negative after that. Null: the client is not in. `now`: page time. */
export function untilClosing(state: DeskState, now: number): number | null {
  const { minutes, reserve } = appointment(state);
  return state.begun === null ? null : state.begun + (minutes - reserve) * MINUTE - now;
}

/** How long the client has been in, and how long it is until closing begins. Of a session that is closed neither counts any more. */
export function elapsedWords(state: DeskState, now: number): string {
  const left = untilClosing(state, now);
  if (state.begun === null || left === null) return "not begun";
  if (state.view?.state === "closed") return "";
  const since = `${Math.max(0, Math.floor((now - state.begun) / MINUTE))} min in`;
  return left > 0 ? `${since}, closing in ${Math.ceil(left / MINUTE)}` : `${since}, closing`;
}

/** Said for a minute at ten and at five minutes, and from then on when it is time. */
export function timeWords(state: DeskState, now: number): string | null {
  const left = untilClosing(state, now);
  if (left === null || state.view?.state === "closed") return null;
  const minutes = left / MINUTE;
  if (minutes <= 0) return "It is time to begin closing.";
  if (minutes > 9 && minutes <= 10) return "Ten minutes until closing begins.";
  return minutes > 4 && minutes <= 5 ? "Five minutes until closing begins." : null;
}
