// A desk driven in virtual time, for the tests of the rules. Not part of any page.
import type { DeskView } from "../wire/DeskView";
import type { Order } from "../wire/Order";
import type { Refusal } from "../wire/Refusal";
import type { SessionLog } from "../wire/SessionLog";
import { EMPTY_LOG, freshDesk, type Action, type Command, type DeskEvent, type DeskState } from "./model";
import { step } from "./reducer";
import { aSet, aShowing, aView } from "./sample.fixture";

/** See the head of this file. */
export class Desk {
  state: DeskState = freshDesk(0);
  now = 0;
  private ids = 0;
  private seq = 1;

  /** Opens the line and hears `view`. */
  static with(view: DeskView): Desk {
    const desk = new Desk();
    desk.event({ kind: "line", open: true });
    desk.event({ kind: "heard", message: { type: "view", ...view } });
    return desk;
  }
  event(event: DeskEvent): Command[] {
    const { state, commands } = step(this.state, event, this.now);
    this.state = state;
    return commands;
  }
  does(action: Action, words = ""): Command[] {
    return this.event({ kind: "action", action, id: `entry-${++this.ids}`, words });
  }
  sees(changes: Partial<DeskView>): Command[] {
    const known = this.state.view ?? aView();
    this.seq += 1;
    return this.event({ kind: "heard", message: { type: "view", ...known, seq: this.seq, ...changes } });
  }
  /** The server's log comes, with this in it. */
  reads(log: Partial<SessionLog>): Command[] {
    return this.event({ kind: "log", log: { ...EMPTY_LOG, ...log } });
  }
  answers(id: number, refused: Refusal | null = null): Command[] {
    return this.event({ kind: "heard", message: { type: "answer", id, refused } });
  }
  notice(): string {
    return this.state.notice?.words ?? "";
  }
  later(ms: number): this {
    this.now += ms;
    return this;
  }
}

export const orders = (commands: Command[]): Order[] =>
  commands.flatMap((command) => (command.kind === "send" && command.message.type === "order" ? [command.message.order] : []));
export const kinds = (commands: Command[]): string[] => orders(commands).map((order) => order.kind);
export const running = (): DeskView => aView({ state: "running", set: aSet() });

/** A desk that has heard this much of its room, and no more. */
export function deskWith(view: DeskView, now = 0): DeskState {
  const open = step(freshDesk(now), { kind: "line", open: true }, now).state;
  return step(open, { kind: "heard", message: { type: "view", ...view } }, now).state;
}

/** And then of the client's page what it shows. */
export const show = (state: DeskState, now: number, changes = {}): DeskState =>
  step(state, { kind: "heard", message: { type: "showing", ...aShowing(changes) } }, now).state;
