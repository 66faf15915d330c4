/** A script of its own that comes once its page is up: what the page is for waits for none of it. */

/** The script at an address, there or on its way. `M`: what it exports. */
export class Later<M> {
  private coming: Promise<M | null> | null = null;
  private tries = 0;

  constructor(
    private readonly address: string,
    /** Tests have another. */
    private readonly load: (address: string) => Promise<unknown> = (address) => import(address),
  ) {}

  /** Null: it did not come. Asked again, it is tried again. */
  fetched(): Promise<M | null> {
    this.coming ??= this.fetch();
    return this.coming;
  }

  private async fetch(): Promise<M | null> {
    // A browser may keep that an address could not be had.
    const address = this.tries === 0 ? this.address : `${this.address}?${this.tries}`;
    try {
      return (await this.load(address)) as M;
    } catch {
      this.tries += 1;
      this.coming = null;
      return null;
    }
  }
}
