/**
 * A Chromium on any machine: the one named by CHROME_PATH, one on the PATH, else the headless one inside the
 * dev dependency @sparticuz/chromium. LANDFALL_BROWSER=bundled takes the last without looking for others;
 * LANDFALL_BROWSER=lighter takes it where this machine can run it.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onThePath } from './on-the-path.ts';

export interface FoundBrowser {
  readonly executable: string;
  /** What the browser needs in its environment beside our own. */
  readonly env: Readonly<Record<string, string>>;
  dispose(): void;
}

const NAMES = ['chromium', 'chromium-headless-shell', 'google-chrome', 'google-chrome-stable'];

export function findBrowser(): FoundBrowser {
  const wish = process.env.LANDFALL_BROWSER;
  const installed = wish === 'bundled' ? null : installedBrowser();
  if (installed === null) return unpackBundled();
  try {
    if (wish === 'lighter') return unpackBundled();
  } catch {
    // It is made for Linux; elsewhere the installed one does.
  }
  return { executable: installed, env: {}, dispose: () => undefined };
}

const installedBrowser = (): string | null =>
  process.env.CHROME_PATH ? process.env.CHROME_PATH : onThePath(NAMES);

/**
 * The package unpacks into the system's temporary folder and takes whatever lies there already; so it gets a
 * folder of its own. It unpacks its libraries (NSS and others) only where it believes to be in one certain
 * cloud: it is told so, in a process of its own.
 */
function unpackBundled(): FoundBrowser {
  const folder = mkdtempSync(join(tmpdir(), 'landfall-browser-'));
  const dispose = () => rmSync(folder, { recursive: true, force: true });
  const unpacked = spawnSync(
    process.execPath,
    [
      '--input-type=module',
      '-e',
      "process.stdout.write(await (await import('@sparticuz/chromium')).default.executablePath())",
    ],
    {
      env: { ...process.env, TMPDIR: folder, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' },
      encoding: 'utf8',
    },
  );
  const executable = unpacked.stdout;
  if (unpacked.status !== 0 || executable === '') {
    dispose();
    throw new Error(`no browser: the bundled one could not be unpacked. ${unpacked.stderr}`);
  }
  const starts = (env: Readonly<Record<string, string>>) =>
    spawnSync(executable, ['--version'], { env: { ...process.env, ...env } }).status === 0;
  const fonts = fontsWhereNoneAre(folder);
  const withLibraries = { ...fonts, LD_LIBRARY_PATH: join(folder, 'al2023', 'lib') };
  const env = starts(fonts) ? fonts : withLibraries;
  if (!starts(env)) {
    dispose();
    throw new Error('no browser: the bundled one does not start, not even with its own libraries.');
  }
  return { executable, env, dispose };
}

/** A machine without fontconfig gets the one typeface of the package, so that there is something to draw with. */
function fontsWhereNoneAre(folder: string): Readonly<Record<string, string>> {
  if (existsSync('/etc/fonts/fonts.conf')) return {};
  const file = join(folder, 'fonts.conf');
  const dir = join(folder, 'fonts');
  const cache = join(folder, 'fonts-cache');
  writeFileSync(file, `<fontconfig><dir>${dir}</dir><cachedir>${cache}</cachedir></fontconfig>`);
  return { FONTCONFIG_FILE: file };
}
