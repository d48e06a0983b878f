import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';
import { licences } from './src/cli/licences.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('./src'),
  base: './',
  plugins: [svelte({ configFile: here('./svelte.config.js') }), licences()],
  build: { outDir: here('./dist/app'), emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0 },
  worker: { format: 'es' },
  preview: { port: 4173, strictPort: false },
  test: {
    root: here('.'),
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/browser/**'],
    // Every core: left to itself, the runner keeps one back, which on two cores doubles the time.
    maxWorkers: '100%',
    testTimeout: 60_000,
  },
});
