/** What this page finds out about its device, and the few things it may ask of it. */
import { CARD_MM } from "../live/optics";
import type { Device } from "../wire/Device";
import type { Abilities } from "./check";

const lessMovement = matchMedia("(prefers-reduced-motion: reduce)");

/** What this browser and system have. */
export const abilities = (): Abilities => ({
  reducedMotion: lessMovement.matches,
  handheld: matchMedia("(pointer: coarse)").matches,
  vibrates: "vibrate" in navigator && matchMedia("(pointer: coarse)").matches,
  wakeLock: "wakeLock" in navigator,
  fullScreen: document.fullscreenEnabled === true,
  call: document.body.dataset["call"] !== undefined,
});

/** px per mm when the card's short side was made `px` wide. */
export const pxPerMm = (px: number): number => px / CARD_MM.height;

/** The device as the room knows it. */
export class ThisDevice {
  private lock: WakeLockSentinel | undefined;
  private wantsLock = false;
  /** The client had heard it, and the system took it away. */
  private silenced = false;
  private known: Device;

  /**
   * @param field the element that the dot moves in
   * @param onChange something of it changed
   * @param onResize the field's size changed
   * @param onLessMovement the system began to ask for less movement
   */
  constructor(
    private readonly field: HTMLElement,
    private readonly onChange: () => void,
    private readonly onResize: () => void,
    onLessMovement: () => void,
  ) {
    this.known = {
      ...this.size(),
      px_per_mm: null,
      distance_mm: null,
      reduced_motion: lessMovement.matches,
      sound: false,
      sides: null,
      vibration: false,
      wake_lock: false,
      full_screen: document.fullscreenElement !== null,
      checking: true,
    };
    new ResizeObserver(() => this.measure()).observe(field);
    // Other headphones, or the same ones as a headset with its microphone on, which often plays mono.
    navigator.mediaDevices?.addEventListener("devicechange", () => this.known.sides !== null && this.learn({ sides: null }));
    lessMovement.addEventListener("change", () => lessMovement.matches && onLessMovement());
  }

  /** See `Abilities`. */
  readonly handheld = abilities().handheld;

  /** A copy that does not change. */
  get current(): Device {
    return this.known;
  }

  /** Takes in what the client answered. */
  learn(news: Partial<Device>): void {
    this.known = { ...this.known, ...news };
    this.onChange();
  }

  /** Keeps the screen on; call it in the handler of a tap. @returns whether the system agreed. */
  async keepAwake(): Promise<boolean> {
    this.wantsLock = true;
    try {
      this.lock = await navigator.wakeLock.request("screen");
    } catch {
      // Refused, for example on a low battery: the page says what to do instead.
      this.learn({ wake_lock: false });
      return false;
    }
    this.lock.addEventListener("release", () => this.learn({ wake_lock: false }));
    this.learn({ wake_lock: true });
    return true;
  }

  /** Asks again for what the system took away while the page was hidden. */
  regain(): void {
    if (this.wantsLock && this.lock?.released !== false && document.visibilityState === "visible") void this.keepAwake();
  }

  /** The system took the sound away, or gave back what the client had heard. */
  soundIs(ready: boolean): void {
    if (ready === this.known.sound || (ready && !this.silenced)) return;
    this.silenced = !ready;
    this.learn({ sound: ready });
  }

  /** Fills the screen; call it in the handler of a tap. A refusal changes nothing: the page is as good without. */
  async fillScreen(): Promise<void> {
    await document.documentElement.requestFullscreen({ navigationUI: "hide" }).catch(() => undefined);
  }

  /** At the end: the screen may sleep, and the page does not fill it any more. */
  letGo(): void {
    this.wantsLock = false;
    // What is gone already need not be given back.
    void this.lock?.release().catch(() => undefined);
    if (document.fullscreenElement !== null) void document.exitFullscreen().catch(() => undefined);
  }

  private size(): Pick<Device, "width_px" | "height_px"> {
    const { width, height } = this.field.getBoundingClientRect();
    return { width_px: Math.round(width), height_px: Math.round(height) };
  }

  private measure(): void {
    const { width_px, height_px } = this.size();
    if (width_px === this.known.width_px && height_px === this.known.height_px) return;
    this.onResize();
    this.learn({ width_px, height_px });
  }
}
