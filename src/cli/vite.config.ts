import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** The command line as one file for Node, its shebang kept, everything it needs inside. */
export default defineConfig({
  root: here('../..'),
  publicDir: false,
  build: {
    ssr: here('./landfall.ts'),
    outDir: here('../../dist/cli'),
    emptyOutDir: true,
    target: 'node20',
  },
  ssr: { noExternal: true },
});
