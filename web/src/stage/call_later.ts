/** Picture and voice have a script of their own. Until it is there, what the room says of them is kept; where it does not come, the page is as good without. */
import { text } from "../live/element";
import { Later } from "../live/later";
import { say } from "../live/words";
import type { StageCall, StagePage } from "../stage_call/main";
import type { ToCaller } from "../wire/ToCaller";
import { answers, button, speech } from "./parts";

/** See the head of this file. */
export class CallLater {
  private call: StageCall | undefined;
  private readonly script: Later<typeof import("../stage_call/main")> | undefined;
  private heard: ToCaller[] = [];

  /** `address`: of the script; undefined: no picture and voice go by this page. */
  constructor(
    address: string | undefined,
    private readonly page: StagePage,
  ) {
    if (address === undefined) return;
    this.script = new Later(address);
    void this.fetched();
  }

  /** Whether the check asks about it. */
  get asks(): boolean {
    return this.script !== undefined;
  }

  /** The question of the check, put into its place when it is there. */
  ask(next: () => void): HTMLElement[] {
    if (this.call) return this.call.ask(next);
    const place = document.createElement("div");
    void this.fetched().then(() =>
      place.replaceWith(...(this.call?.ask(next) ?? [...speech("call_heading", "call_late"), answers(button("call_go", next, "main"))])),
    );
    return [place];
  }

  hear(said: ToCaller): void {
    this.keep(said);
    if (this.call) this.pass();
    else if (said.kind !== "signal" || said.signal.kind === "offer") void this.fetched().then(() => this.missed(said));
  }

  /** What is of an earlier call counts no more, nor an offer before another. */
  private keep(said: ToCaller): void {
    const isOffer = (one: ToCaller) => one.kind === "signal" && one.signal.kind === "offer";
    if (said.kind === "begin" || said.kind === "over") this.heard = [said];
    else this.heard = [...this.heard.filter((one) => !(isOffer(said) && isOffer(one))), said];
  }

  end(): void {
    this.call?.end();
  }

  /** The other waits for a call, and this page has nothing to make it with. */
  private missed(said: ToCaller): void {
    if (this.call || said.kind !== "begin") return;
    text(this.page.said, say("call_unreached"));
  }

  private async fetched(): Promise<void> {
    const script = await this.script?.fetched();
    if (!script) return;
    this.call ??= new script.StageCall(this.page);
    this.pass();
  }

  private pass(): void {
    for (const said of this.heard.splice(0)) this.call?.hear(said);
  }
}
