/** What the parts of the audio port share: one audio context, one renderer, and the bus of the band that is open. */
import { BackingSounds } from '../audio/backing/backing-sounds.ts';
import { createBandRenderer, type BandRenderer } from '../audio/band/render-client.ts';
import { createAudioContext } from '../audio/base/context.ts';
import kitUrl from '../audio/kit/landfall-kit.sf3?url';

export class OpenAudio {
  readonly context: AudioContext = createAudioContext();
  readonly renderer: BandRenderer = createBandRenderer(kitUrl, this.context.sampleRate);
  readonly backings = new BackingSounds(() => this.context);
  /** The output of the band that is open: a microphone that is opened now records it beside its own samples. */
  bandBus: AudioNode | null = null;

  /** Clears the bus when its band is closed, unless another band has been opened since. */
  releaseBandBus(bus: AudioNode): void {
    if (this.bandBus === bus) this.bandBus = null;
  }
}
