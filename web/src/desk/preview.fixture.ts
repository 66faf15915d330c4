// What the preview's tests draw on: virtual time, in which a frame's script has its turn late, and a browser that plays animations by
// each frame's own time. Not part of any page.
import type { TestContext } from "node:test";

/** Sixty a second, ms. */
const FRAME = 1000 / 60;

interface Played {
  frames: Keyframe[];
  duration: number;
  startTime: number;
}

const placeOf = (transform: unknown): [number, number] => {
  const [, x, y] = /translate\((.+?)px, (.+?)px\)/.exec(String(transform)) ?? [];
  return [Number(x), Number(y)];
};

/** A box of 400 by 40 px with a dot of 10 in it; `late`: how long after a frame's time its script has its turn, ms. */
export class Screen {
  private now = 0;
  private frameAt = 0;
  private wanted = new Map<number, FrameRequestCallback>();
  private playing: Played | undefined;
  private readonly style = { transform: "" };
  private readonly dot: unknown;
  readonly box: HTMLElement;

  constructor(
    test: TestContext,
    private readonly late: number,
  ) {
    const animate = (frames: Keyframe[], { duration }: { duration: number }) => this.animate(frames, duration);
    this.dot = { style: this.style, offsetWidth: 10, animate };
    this.box = { clientWidth: 400, clientHeight: 40, querySelector: () => this.dot } as unknown as HTMLElement;
    test.mock.method(performance, "now", () => this.now);
    const globals = {
      requestAnimationFrame: (act: FrameRequestCallback) => this.wanted.set(this.wanted.size + this.frameAt + 1, act).size + this.frameAt,
      cancelAnimationFrame: () => this.wanted.clear(),
      getComputedStyle: () => ({ transform: this.shown }),
    };
    for (const [name, value] of Object.entries(globals)) {
      const before = Object.getOwnPropertyDescriptor(globalThis, name);
      Object.defineProperty(globalThis, name, { value, configurable: true, writable: true });
      test.after(() => (before ? Object.defineProperty(globalThis, name, before) : Reflect.deleteProperty(globalThis, name)));
    }
  }

  /** Lets `ms` pass, with the script free to run in the first `free` of them. @returns each frame's time and where the dot is in it, px from its middle */
  pass(ms: number, free: number): { at: number; x: number; y: number }[] {
    const [until, freeUntil] = [this.frameAt + ms, this.frameAt + free];
    const seen = [];
    while (this.frameAt + FRAME <= until) {
      this.frameAt += FRAME;
      this.now = this.frameAt + this.late;
      if (this.frameAt <= freeUntil) this.run();
      const [x, y] = placeOf(this.shown);
      seen.push({ at: this.frameAt, x, y });
    }
    return seen;
  }

  private run(): void {
    const acts = [...this.wanted.values()];
    this.wanted.clear();
    for (const act of acts) act(this.frameAt);
  }

  private animate(frames: Keyframe[], duration: number): Played {
    const played = {
      frames,
      duration,
      startTime: this.frameAt,
      cancel: () => {
        if (this.playing === played) this.playing = undefined;
      },
    };
    this.playing = played;
    return played;
  }

  /** The transform on the screen, straight between two keyframes. */
  private get shown(): string {
    if (!this.playing) return this.style.transform;
    const { frames, duration, startTime } = this.playing;
    const along = Math.min(Math.max((this.frameAt - startTime) / duration, 0), 1) * (frames.length - 1);
    const [before, after] = [Math.floor(along), Math.ceil(along)].map((i) => placeOf(frames[i]?.["transform"]));
    const between = (axis: 0 | 1): number => before![axis] + (after![axis] - before![axis]) * (along - Math.floor(along));
    return `translate(${between(0)}px, ${between(1)}px)`;
  }
}
