// The closing has a script of its own, which comes once the desk is up: leading a set waits for none of it.
import type { ClosingPanel } from "../closing/main";
import { Later } from "../live/later";
import { part, text } from "./dom";

/** It is fetched unasked so long after the page came, ms: a server that is replaced in mid-session has another one. */
const UNASKED_AFTER = 3000;
const NOT_THERE = "The closing did not come: the server was not heard. The closing list in a tab of its own works as soon as it is; # tries again.";

/** The panel of the closing, there or on its way. `address`: of its script. */
export class Closing {
  private panel: ClosingPanel | null = null;
  private readonly script: Later<typeof import("../closing/main")>;

  constructor(
    address: string,
    private readonly session: string,
    private readonly onClosed: () => void,
  ) {
    this.script = new Later(address);
    setTimeout(() => void this.fetched(), UNASKED_AFTER);
  }

  /** Leaving the page now would lose something. */
  get unsaved(): boolean {
    return this.panel?.unsaved ?? false;
  }

  /** The panel has come to the front. */
  async show(): Promise<void> {
    await this.fetched();
    if (this.panel === null) text(part("closing-status"), NOT_THERE);
    else await this.panel.show();
  }

  digit(value: number): void {
    this.panel?.digit(value);
  }

  enter(): void {
    this.panel?.enter();
  }

  move(by: 1 | -1): void {
    this.panel?.move(by);
  }

  /** The session is closed, maybe elsewhere. */
  over(): void {
    this.panel?.over();
  }

  private async fetched(): Promise<void> {
    const script = await this.script.fetched();
    if (script !== null) this.panel ??= new script.ClosingPanel(this.session, this.onClosed);
  }
}
