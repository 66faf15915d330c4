// The closing has a script of its own, which comes once the desk is up: leading a set waits for none of it.
import type { ClosingPanel } from "../closing/main";
import { part, text } from "./dom";

/** It is fetched unasked so long after the page came, ms: a server that is replaced in mid-session has another one. */
const UNASKED_AFTER = 3000;
const NOT_THERE = "The closing did not come: the server was not heard. The closing list in a tab of its own works as soon as it is; # tries again.";

/** The panel of the closing, there or on its way. `address`: of its script. */
export class Closing {
  private panel: ClosingPanel | null = null;
  private coming: Promise<void> | null = null;
  private tries = 0;

  constructor(
    private readonly address: string,
    private readonly session: string,
    private readonly onClosed: () => void,
  ) {
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

  private fetched(): Promise<void> {
    this.coming ??= this.fetch();
    return this.coming;
  }

  private async fetch(): Promise<void> {
    // A browser may keep that an address could not be had.
    const address = this.tries === 0 ? this.address : `${this.address}?${this.tries}`;
    try {
      const { ClosingPanel } = (await import(address)) as typeof import("../closing/main");
      this.panel = new ClosingPanel(this.session, this.onClosed);
    } catch {
      this.tries += 1;
      this.coming = null;
    }
  }
}
