import { chmodSync, copyFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { licences } from './licences.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
let out = here('../../dist/cli');

/** The command line for Node: one file with its shebang, and beside it the decoders, loaded when needed. */
export default defineConfig({
  root: here('../..'),
  publicDir: false,
  build: {
    ssr: here('./landfall.ts'),
    outDir: out,
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: { checks: { pluginTimings: false } },
  },
  ssr: { noExternal: true },
  plugins: [
    licences(),
    {
      name: 'executable-and-kit',
      configResolved(config) {
        out = config.build.outDir;
      },
      closeBundle() {
        for (const file of ['landfall-kit.sf3', 'LICENSE-kit.txt'])
          copyFileSync(here(`../audio/kit/${file}`), `${out}/${file}`);
        chmodSync(`${out}/landfall.js`, 0o755);
      },
    },
  ],
});
