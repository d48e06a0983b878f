/** A stock Firefox, driven through WebDriver BiDi, on a profile that stays through a kill. */
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from '@playwright/test';
import type axeCore from 'axe-core';
import puppeteer, { type Browser, type ElementHandle, type Page } from 'puppeteer-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

const PREFERENCES = {
  // Nobody is asked for the microphone. Firefox's own fake one sends a sine without any beginning, which is no note.
  'media.navigator.permission.disabled': true,
  'media.autoplay.default': 0,
  'intl.accept_languages': 'en',
  'browser.download.folderList': 2,
  'browser.download.useDownloadDir': true,
  'browser.download.always_ask_before_handling_new_types': false,
  // See "Two kinds of machine code" in src/audio/browsers.md.
  'javascript.options.wasm_simd_avx': false,
};

export class Firefox {
  readonly #executable: string;
  readonly #url: string;
  readonly #pulseServer: string;
  readonly #folder = mkdtempSync(join(tmpdir(), 'landfall-firefox-'));
  readonly #downloads = join(this.#folder, 'downloads');
  readonly #faults: string[] = [];
  #browser: Browser | null = null;
  #page: Page | null = null;

  /** @param pulseServer its sound output; one that nobody answers at is a machine without any output */
  constructor(executable: string, url: string, pulseServer: string) {
    this.#executable = executable;
    this.#url = url;
    this.#pulseServer = pulseServer;
    mkdirSync(this.#downloads);
  }

  /** Errors of the page: exceptions, and what a content security policy blocked. */
  get faults(): readonly string[] {
    return this.#faults;
  }

  async open(): Promise<void> {
    this.#browser = await puppeteer.launch({
      browser: 'firefox',
      executablePath: this.#executable,
      headless: true,
      userDataDir: join(this.#folder, 'profile'),
      env: { ...process.env, PULSE_SERVER: this.#pulseServer },
      defaultViewport: { width: 1280, height: 720 },
      extraPrefsFirefox: { ...PREFERENCES, 'browser.download.dir': this.#downloads },
    });
    this.#page = await this.#browser.newPage();
    this.#page.on('pageerror', (error) => this.#faults.push(String(error)));
    this.#page.on('console', (message) => {
      if (message.type() === 'error') this.#faults.push(message.text());
    });
    await this.#page.goto(this.#url);
  }

  /** As a power cut: nothing is written any more. It is opened again on the same profile. */
  async killAndReopen(): Promise<void> {
    const process = this.#browser!.process()!;
    const gone = new Promise((resolve) => process.once('exit', resolve));
    process.kill('SIGKILL');
    await gone;
    await this.open();
  }

  reload(): Promise<unknown> {
    return this.#page!.reload();
  }

  /** Presses the button that begins with these words, as soon as it is there. */
  async press(words: string): Promise<void> {
    const now = () =>
      this.#page!.evaluate((wanted) => {
        const found = [...document.querySelectorAll('button')].find((button) =>
          button.innerText.trim().startsWith(wanted),
        );
        if (found === undefined || found.disabled) return false;
        found.click();
        return true;
      }, words);
    await expect.poll(now, { message: `the button “${words}”`, timeout: 120_000 }).toBe(true);
  }

  /** Presses the first button of the region of this name. */
  async pressFirstIn(region: string): Promise<void> {
    const now = () =>
      this.#page!.evaluate((name) => {
        const named = [...document.querySelectorAll('section[aria-labelledby], section[aria-label]')].find(
          (section) =>
            (
              section.getAttribute('aria-label') ??
              document.getElementById(section.getAttribute('aria-labelledby')!)?.textContent
            )?.trim() === name,
        );
        const button = named?.querySelector('button');
        button?.click();
        return button !== null && button !== undefined;
      }, region);
    await expect.poll(now, { message: `a button in “${region}”`, timeout: 120_000 }).toBe(true);
  }

  text(): Promise<string> {
    return this.#page!.evaluate(() => document.body.innerText);
  }

  async expectText(wanted: string | RegExp): Promise<void> {
    const expected = expect.poll(() => this.text(), { timeout: 120_000 });
    await (typeof wanted === 'string' ? expected.toContain(wanted) : expected.toMatch(wanted));
  }

  async giveFile(path: string): Promise<void> {
    const input = await this.#page!.waitForSelector('input[type=file][multiple][accept^="audio"]');
    await (input as ElementHandle<HTMLInputElement>).uploadFile(path);
  }

  /** Fills the number field whose label begins with these words. */
  async fillNumber(label: string, value: number): Promise<void> {
    const now = () =>
      this.#page!.evaluate(
        (name, text) => {
          const input = [...document.querySelectorAll<HTMLInputElement>('input[type=number]')].find((field) =>
            [field.getAttribute('aria-label'), ...[...(field.labels ?? [])].map((l) => l.innerText)].some(
              (words) => words?.trim().startsWith(name),
            ),
          );
          if (input === undefined) return false;
          input.value = text;
          for (const kind of ['input', 'change']) input.dispatchEvent(new Event(kind, { bubbles: true }));
          return true;
        },
        label,
        String(value),
      );
    await expect.poll(now, { message: `the field “${label}”`, timeout: 60_000 }).toBe(true);
  }

  /** Saves a file by a button of the page; answers with its path. */
  async download(button: string): Promise<string> {
    const before = new Set(readdirSync(this.#downloads));
    await this.press(button);
    const fresh = () => readdirSync(this.#downloads).filter((name) => !before.has(name));
    // While Firefox writes, a second file of the same name with “.part” lies beside it.
    const whole = () => {
      const names = fresh();
      return names.length === 1 && !names[0]!.endsWith('.part');
    };
    await expect.poll(whole, { message: 'a saved file', timeout: 60_000 }).toBe(true);
    return join(this.#downloads, fresh()[0]!);
  }

  /** WCAG 2.2 A and AA, as far as axe can tell. */
  async expectAccessible(): Promise<void> {
    // Firefox blocks text that a driver sends as eval by the page's policy; functions are let through.
    await this.#page!.evaluate(new Function(AXE) as () => void);
    const told = await this.#page!.evaluate(async (values) => {
      const { axe } = globalThis as unknown as { axe: typeof axeCore };
      const { violations } = await axe.run({ runOnly: { type: 'tag', values }, resultTypes: ['violations'] });
      return violations.map(
        ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
      );
    }, WCAG);
    expect(told).toEqual([]);
  }

  /** How many private files the page has written, in all its folders. */
  privateFiles(): Promise<number> {
    return this.#page!.evaluate(async () => {
      let files = 0;
      const open = [await navigator.storage.getDirectory()];
      for (let folder = open.pop(); folder !== undefined; folder = open.pop())
        for await (const entry of (
          folder as unknown as { values(): AsyncIterable<FileSystemHandle> }
        ).values())
          if (entry.kind === 'file') files++;
          else open.push(entry as FileSystemDirectoryHandle);
      return files;
    });
  }

  async close(): Promise<void> {
    await this.#browser?.close();
    rmSync(this.#folder, { recursive: true, force: true, maxRetries: 5 });
  }
}
