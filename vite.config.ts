import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';
import { guide } from './src/cli/guide.ts';
import { installable } from './src/cli/installable.ts';
import { licences } from './src/cli/licences.ts';
import { LongestFirst } from './tests/longest-first.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/**
 * Tests of functions and classes whose modules keep nothing from one file of tests to the next but tables that they
 * would make again: the files of one process share the modules that they load. All others load their own: the
 * synthesiser's sound depends a little on what it played before, and fakes of the browser stay where they were put.
 */
const TOGETHER = [
  'tests/*.test.ts',
  'tests/core/*.test.ts',
  'tests/core/{band,base,beats,chart,correct,files,grade,harmony,lesson,listen,midi,music,notation,practice,report,take,take-file,words}/**/*.test.ts',
  'tests/core/room/{delay-grid,align/room-rate,check/stroke-delay,path/first-guess}.test.ts',
  // All but those that hear the synthesiser.
  'tests/outside/!(band-midi|beats|listener-accuracy|room-scipy).test.ts',
  'tests/{bench,cli,fuzz,state,ui}/**/*.test.ts',
];

export default defineConfig({
  root: here('./src'),
  base: './',
  plugins: [svelte({ configFile: here('./svelte.config.js') }), licences(), guide(), ...installable()],
  build: {
    outDir: here('./dist/app'),
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    // What is fetched first has a limit of its own (tests/browser/first-load.spec.ts); the rest comes later, in one piece.
    chunkSizeWarningLimit: 1000,
    // A browser that can't fetch modules ahead by itself fetches the same ones a moment later.
    modulePreload: { polyfill: false },
    rolldownOptions: {
      checks: { pluginTimings: false },
      // All that the open page imports at once is one file: in many small ones it is larger when compressed.
      output: { codeSplitting: { groups: [{ name: 'first-load', tags: ['$initial'] }] } },
      // Tables of chords and scales that tonal makes when it is loaded: only its notes and intervals are used.
      treeshake: { moduleSideEffects: [{ test: /node_modules\/(@tonaljs|tonal)\//, sideEffects: false }] },
    },
  },
  worker: { format: 'es', rolldownOptions: { checks: { pluginTimings: false } } },
  preview: { port: 4173, strictPort: false },
  test: {
    root: here('.'),
    exclude: ['tests/browser/**'],
    // Every core: left to itself, the runner keeps one back, which on two cores doubles the time.
    maxWorkers: '100%',
    sequence: { sequencer: LongestFirst },
    // Patience for a machine that does other work beside it: no test asks how long it takes.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    projects: [
      { extends: true, test: { name: 'together', include: TOGETHER, isolate: false } },
      {
        extends: true,
        test: {
          name: 'apart',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', ...TOGETHER],
          // Modules of its own for each file, as a process gives them, for less of the processor's time.
          pool: 'threads',
        },
      },
    ],
  },
});
