// Picture and voice have a script of their own, which comes beside the desk's: leading a set waits for none of it.
import type { DeskCall, DeskPage } from "../desk_call/main";
import { Later } from "../live/later";
import type { ToCaller } from "../wire/ToCaller";

const NOT_THERE = "Picture and voice did not load: by telephone, or load the desk again between sets.";

/** The call at the desk, there or on its way; what the room says of it meanwhile is kept. `face`: its place; null: no call goes by this portal. */
export class CallLater {
  private call: DeskCall | null = null;
  private heard: ToCaller[] = [];

  constructor(
    face: HTMLElement | null,
    private readonly page: DeskPage,
  ) {
    if (face !== null) void this.fetched(face, new Later(face.dataset.call ?? ""));
  }

  hear(said: ToCaller): void {
    this.heard.push(said);
    this.pass();
  }

  draw(): void {
    this.call?.draw();
  }

  mute(): void {
    this.call?.mute();
  }

  /** This desk was sent away: nobody is to be seen or heard from it. */
  end(): void {
    this.heard = [];
    this.call?.end();
  }

  private async fetched(face: HTMLElement, script: Later<typeof import("../desk_call/main")>): Promise<void> {
    const came = (await script.fetched()) ?? (await script.fetched());
    if (came === null) face.replaceChildren(NOT_THERE);
    else this.call = new came.DeskCall(face, this.page);
    this.pass();
  }

  private pass(): void {
    for (const said of this.call === null ? [] : this.heard.splice(0)) this.call?.hear(said);
  }
}
