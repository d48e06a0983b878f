/**
 * General-purpose tools to compare with, where they are installed: aubio's command line (Debian aubio-tools) and
 * Basic Pitch (npm, Bittner et al., ICASSP 2022). Neither is a dependency. Basic Pitch is looked for in the project
 * and in the folder that BENCH_MODULES names.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { wavBytes } from '../../fixtures/lines/wav.ts';
import type { Listen } from './measure.ts';
import type { MetricNote } from './note-metrics.ts';

/** aubionotes with its defaults, or null where it is not installed. Its time holds a process start and a file. */
export function aubionotes(): Listen | null {
  if (spawnSync('aubionotes', ['-h']).error) return null;
  return (samples, sampleRate) => {
    const folder = mkdtempSync(join(tmpdir(), 'bench-'));
    try {
      const file = join(folder, 'line.wav');
      writeFileSync(file, wavBytes(samples, sampleRate));
      const text = execFileSync('aubionotes', ['-i', file, '-r', String(sampleRate)], { encoding: 'utf8' });
      return text.split('\n').flatMap((line): MetricNote[] => {
        const [midi, onsetSeconds, offsetSeconds] = line.split('\t').map(Number);
        if (midi === undefined || onsetSeconds === undefined || offsetSeconds === undefined) return [];
        return [{ midi, onsetSeconds, offsetSeconds }];
      });
    } finally {
      rmSync(folder, { recursive: true });
    }
  };
}

interface BasicPitchModule {
  readonly BasicPitch: new (model: Promise<unknown>) => {
    evaluateModel(
      samples: Float32Array,
      onComplete: (frames: number[][], onsets: number[][]) => void,
      onProgress: (share: number) => void,
    ): Promise<void>;
  };
  outputToNotesPoly(frames: number[][], onsets: number[][]): unknown[];
  noteFramesToTime(
    notes: unknown[],
  ): { startTimeSeconds: number; durationSeconds: number; pitchMidi: number }[];
}

/** A kernel's arguments, as far as `fill` uses them. */
interface FillArguments {
  readonly attrs: { readonly shape: readonly number[]; readonly value: number; readonly dtype?: string };
  readonly backend: {
    makeOutput(shape: readonly number[], dtype: string): object;
    typedArrayFromHeap(tensor: object): Float32Array;
  };
}

interface TensorFlow {
  setBackend(name: string): Promise<boolean>;
  unregisterKernel(name: string, backend: string): void;
  registerKernel(kernel: {
    kernelName: string;
    backendName: string;
    kernelFunc: (given: FillArguments) => object;
  }): void;
  readonly io: { fromMemory(parts: object): unknown };
  loadGraphModel(from: unknown): Promise<unknown>;
}

/** The rate Basic Pitch listens at. */
const basicPitchRate = 22_050;

/** Windowed-sinc resampling: plain and slow, good to −60 dB. */
function resampled(samples: Float32Array, fromRate: number, toRate: number): Float32Array {
  const ratio = fromRate / toRate;
  const cut = Math.min(1, 0.92 / ratio);
  const reach = Math.ceil(16 * Math.max(1, ratio));
  const out = new Float32Array(Math.floor(samples.length / ratio));
  for (let i = 0; i < out.length; i++) {
    const centre = i * ratio;
    const first = Math.ceil(centre - reach);
    let sum = 0;
    for (let k = first; k <= centre + reach; k++) {
      const x = k - centre;
      const sinc = x === 0 ? cut : Math.sin(Math.PI * cut * x) / (Math.PI * x);
      sum += (samples[k] ?? 0) * sinc * (0.5 + 0.5 * Math.cos((Math.PI * x) / reach));
    }
    out[i] = sum;
  }
  return out;
}

/**
 * Runs TensorFlow.js in WebAssembly where that is installed beside it (@tensorflow/tfjs-backend-wasm of the same
 * version), which is many times faster than its plain JavaScript. The package's own `fill` fails where no type is
 * given, so it is replaced by one that takes float32, as the plain one does.
 */
async function hurry(require: NodeJS.Require, tensorFlow: TensorFlow): Promise<void> {
  try {
    require('@tensorflow/tfjs-backend-wasm');
  } catch {
    return;
  }
  const fill = { kernelName: 'Fill', backendName: 'wasm' };
  tensorFlow.unregisterKernel(fill.kernelName, fill.backendName);
  tensorFlow.registerKernel({
    ...fill,
    kernelFunc: ({ attrs, backend }) => {
      const out = backend.makeOutput(attrs.shape, attrs.dtype ?? 'float32');
      backend.typedArrayFromHeap(out).fill(attrs.value);
      return out;
    },
  });
  await tensorFlow.setBackend('wasm');
}

/** Basic Pitch with its defaults, or null where it is not installed. */
export async function basicPitch(): Promise<Listen | null> {
  const places = [process.env['BENCH_MODULES'], process.cwd()].filter((place) => place !== undefined);
  const require = createRequire(join(places[0] ?? '.', 'index.js'));
  let entry: string;
  try {
    entry = require.resolve('@spotify/basic-pitch');
  } catch {
    return null;
  }
  const library = require('@spotify/basic-pitch') as BasicPitchModule;
  const tensorFlow = createRequire(entry)('@tensorflow/tfjs') as TensorFlow;
  await hurry(createRequire(entry), tensorFlow);
  const folder = join(dirname(entry), '../model');
  const model = JSON.parse(readFileSync(join(folder, 'model.json'), 'utf8')) as {
    modelTopology: object;
    weightsManifest: { weights: object[] }[];
  };
  const weights = readFileSync(join(folder, 'group1-shard1of1.bin'));
  const graph = tensorFlow.loadGraphModel(
    tensorFlow.io.fromMemory({
      modelTopology: model.modelTopology,
      weightSpecs: model.weightsManifest.flatMap((part) => part.weights),
      weightData: new Uint8Array(weights).buffer,
    }),
  );
  const detector = new library.BasicPitch(graph);
  return async (samples, sampleRate) => {
    const frames: number[][] = [];
    const onsets: number[][] = [];
    await detector.evaluateModel(
      resampled(samples, sampleRate, basicPitchRate),
      (someFrames, someOnsets) => {
        frames.push(...someFrames);
        onsets.push(...someOnsets);
      },
      () => undefined,
    );
    return library
      .noteFramesToTime(library.outputToNotesPoly(frames, onsets))
      .map((note) => ({
        onsetSeconds: note.startTimeSeconds,
        offsetSeconds: note.startTimeSeconds + note.durationSeconds,
        midi: note.pitchMidi,
      }))
      .sort((a, b) => a.onsetSeconds - b.onsetSeconds);
  };
}
