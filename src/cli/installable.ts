/**
 * What makes the built site an app that can be installed and works without a network: the manifest, the icons, and a
 * service worker (Workbox) that keeps every file of one build on this machine. A newer build is fetched whole beside the
 * older one, and is taken into use only when the page says so or when no window is open: `src/storage/kept-site.ts`.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const { description } = JSON.parse(readFileSync(here('../../package.json'), 'utf8')) as {
  description: string;
};
const icon = (name: string) => here(`../ui/icons/${name}`);

const SIZES = {
  'landfall-192.png': { sizes: '192x192' },
  'landfall-512.png': { sizes: '512x512' },
  'landfall-maskable-512.png': { sizes: '512x512', purpose: 'maskable' },
} as const;
/** Named in a link of the page, for iOS. */
const HOME_SCREEN = 'landfall-180.png';

/** The sounds of the band are the largest file: 1.7 MB. */
const LARGEST_BYTES = 4_000_000;

const icons = (): Plugin => ({
  name: 'icons',
  generateBundle() {
    for (const name of [...Object.keys(SIZES), HOME_SCREEN])
      this.emitFile({ type: 'asset', fileName: `icons/${name}`, source: readFileSync(icon(name)) });
  },
  transformIndexHtml: () => [
    { tag: 'link', attrs: { rel: 'apple-touch-icon', href: `./icons/${HOME_SCREEN}` }, injectTo: 'head' },
  ],
});

export const installable = (): Plugin[] => [
  icons(),
  ...VitePWA({
    filename: 'service-worker.js',
    // The page registers it itself and asks before a newer build is taken into use.
    injectRegister: false,
    registerType: 'prompt',
    manifest: {
      name: 'Landfall',
      short_name: 'Landfall',
      description,
      id: './',
      start_url: './',
      scope: './',
      display: 'standalone',
      background_color: '#f1ecdf',
      theme_color: '#f1ecdf',
      categories: ['music', 'education'],
      icons: Object.entries(SIZES).map(([name, facts]) => ({
        src: `./icons/${name}`,
        type: 'image/png',
        ...facts,
      })),
    },
    workbox: {
      globPatterns: ['**/*.{html,js,css,woff2,otf,svg,png,webp,sf3,txt}'],
      maximumFileSizeToCacheInBytes: LARGEST_BYTES,
      // Names in assets/ carry a hash of their content.
      dontCacheBustURLsMatching: /\/?assets\//,
      // The first visit is served from the kept files as soon as they are all there.
      clientsClaim: true,
      skipWaiting: false,
      cleanupOutdatedCaches: true,
      inlineWorkboxRuntime: true,
      sourcemap: false,
    },
  }),
];
