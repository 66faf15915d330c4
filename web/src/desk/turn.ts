// Turning to another target between sets. Pressed twice, since what was worked on is set aside; then the page is loaded anew with the other.
import { part, text } from "./dom";
import { ask, failureWords } from "./server";

/** See the head of this file. `against` says why nothing is turned to now; "" when it may be. */
export class TurnPanel {
  private armed: number | null = null;
  private once: string | null = null;
  private busy = false;

  constructor(
    private readonly session: string,
    private readonly against: () => string,
  ) {}

  async press(value: number): Promise<void> {
    const button = document.querySelector<HTMLElement>(`[data-act="turn"][data-value="${value}"]`);
    const why = this.against();
    if (button === null || why !== "" || this.busy) return this.say(button === null ? "This number has no target." : why);
    if (this.armed !== value) {
      this.armed = value;
      this.once = null;
      return this.say(`${button.dataset.said ?? ""} Press ${value} once more.`);
    }
    this.busy = true;
    this.once ??= crypto.randomUUID();
    const from = button.dataset.from === "" ? null : button.dataset.from;
    const answer = await ask("POST", `/sessions/${this.session}/target`, { target: button.dataset.target, from }, this.once);
    this.busy = false;
    if (answer.status === 200) return location.reload();
    if (answer.status > 0 && answer.status < 500) this.armed = null;
    this.say(failureWords(answer));
  }

  private say(words: string): void {
    text(part("turn-hint"), words);
  }
}
