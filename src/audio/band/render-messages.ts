/** The messages between page and rendering worker; an answer carries the number of its request. */
import type { BandSound } from '../../core/sound/render-events.ts';
import type { RenderJob } from '../../core/sound/render-job.ts';

export type ToRenderWorker =
  | { readonly id: number; readonly kind: 'open'; readonly kitUrl: string; readonly sampleRate: number }
  | { readonly id: number; readonly kind: 'job'; readonly job: RenderJob };

export type FromRenderWorker =
  | { readonly id: number; readonly ok: true; readonly result: BandSound | Float32Array<ArrayBuffer> | null }
  | ({ readonly id: number; readonly ok: false } & RenderFailure);

export interface RenderFailure {
  /** What the browser says, where it says anything. */
  readonly reason: string | null;
  /** The worker or the kit could not be fetched. */
  readonly isNotLoaded: boolean;
}
