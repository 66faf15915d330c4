/** How loud the own microphone hears: a bar that moves when one speaks. It is heard by this page alone. */
import { element } from "../live/element";
import { say } from "../live/words";

/** So often, ms. */
const LOOK = 100;
/** The bar is full at this loudness (root mean square of full scale): a voice near a microphone. A judgement: no source. */
const FULL = 0.2;

/** See the head of this file. */
export class Level {
  /** Its place on the page. */
  readonly bar = element("meter", { min: 0, max: 1, value: 0, hidden: true, "aria-label": say("call_level") });
  private context: AudioContext | undefined;
  private timer: ReturnType<typeof setInterval> | undefined;

  /** Shows this microphone; `null`: none. */
  follow(voice: MediaStreamTrack | null): void {
    this.end();
    this.bar.hidden = voice === null;
    if (!voice) return;
    const analyser = this.listen(voice);
    if (!analyser) return;
    const samples = new Float32Array(analyser.fftSize);
    this.timer = setInterval(() => {
      // The question was passed over, or gone back from.
      if (!this.bar.isConnected) return this.end();
      analyser.getFloatTimeDomainData(samples);
      this.bar.value = Math.min(1, Math.sqrt(samples.reduce((sum, sample) => sum + sample * sample, 0) / samples.length) / FULL);
    }, LOOK);
  }

  /** A browser that cannot listen to it shows no bar; the voice is sent all the same. */
  private listen(voice: MediaStreamTrack): AnalyserNode | undefined {
    try {
      const context = new AudioContext();
      this.context = context;
      const analyser = new AnalyserNode(context, { fftSize: 1024 });
      context.createMediaStreamSource(new MediaStream([voice])).connect(analyser);
      return analyser;
    } catch {
      this.bar.hidden = true;
      return undefined;
    }
  }

  /** Listens no more. */
  end(): void {
    clearInterval(this.timer);
    void this.context?.close();
    this.context = undefined;
  }
}
