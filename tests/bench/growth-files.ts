/** Files of any size that the growth bench grades. */
import type { Chance } from '../../src/core/base/random.ts';

const CHORDS = ['Dm7', 'G7', 'Cmaj7', 'A7', 'Fm7', 'Bb7', 'Ebmaj7', 'Am7b5', 'D7b9', 'Gm6'];

/** A line that goes up and down within two octaves. */
const midiAt = (place: number) => 55 + ((place * 7) % 23);

/** A list of notes, one every `apart` seconds. */
export function notesFile(count: number, apart: number): string {
  const rows = Array.from(
    { length: count },
    (_, i) => `${(i * apart).toFixed(5)},${(0.8 * apart).toFixed(5)},${midiAt(i)}`,
  );
  return ['onset,duration,pitch', ...rows, ''].join('\n');
}

/** A number as MIDI files have it: seven bits a byte, the largest first. */
function varying(value: number): readonly number[] {
  const bytes = [value & 0x7f];
  for (let rest = value >>> 7; rest > 0; rest >>>= 7) bytes.unshift(0x80 | (rest & 0x7f));
  return bytes;
}

const TICKS_A_BEAT = 960;
/** Without an order of its own a MIDI file is played at 120. */
const TICKS_A_SECOND = 2 * TICKS_A_BEAT;

/**
 * The same as a standard MIDI file of one track (Standard MIDI Files 1.0). Written here, because the time of midi-file's
 * writer grows with the square of its events.
 */
export function midiFile(count: number, apart: number): Uint8Array {
  const track: number[] = [];
  let now = 0;
  const at = (seconds: number, ...event: readonly number[]) => {
    const tick = Math.round(seconds * TICKS_A_SECOND);
    track.push(...varying(tick - now), ...event);
    now = tick;
  };
  for (let i = 0; i < count; i++) {
    at(i * apart, 0x90, midiAt(i), 90);
    at((i + 0.8) * apart, 0x80, midiAt(i), 0);
  }
  track.push(0, 0xff, 0x2f, 0);
  const bytes = (value: number, length: number) =>
    Array.from({ length }, (_, i) => (value >>> (8 * (length - 1 - i))) & 0xff);
  const ascii = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
  return Uint8Array.from([
    ...[...ascii('MThd'), ...bytes(6, 4), ...bytes(0, 2), ...bytes(1, 2), ...bytes(TICKS_A_BEAT, 2)],
    ...[...ascii('MTrk'), ...bytes(track.length, 4)],
    ...track,
  ]);
}

/** A list of beats, with another chord every other beat, in an order that never comes again. */
export function beatsFile(count: number, apart: number, { pick }: Chance): string {
  const rows = Array.from(
    { length: count },
    (_, i) => `${(i * apart).toFixed(4)},${i % 2 === 0 ? pick(CHORDS) : ''}`,
  );
  return ['time,chord', ...rows, ''].join('\n');
}

/** A chart with a chord a bar. */
export function chartText(bars: number, { pick }: Chance): string {
  const rows: string[] = [];
  for (let bar = 0; bar < bars; bar += 4)
    rows.push(`| ${Array.from({ length: Math.min(4, bars - bar) }, () => pick(CHORDS)).join(' | ')} |`);
  return rows.join('\n');
}

const HARMONIES = [
  '<root><root-step>D</root-step></root><kind>minor-seventh</kind>',
  '<root><root-step>G</root-step></root><kind>dominant</kind>',
  '<root><root-step>C</root-step></root><kind>major-seventh</kind>',
  '<root><root-step>B</root-step><root-alter>-1</root-alter></root><kind>major-sixth</kind>',
];
const NOTE =
  '<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration><type>eighth</type></note>';

/** A score with a chord and eight written notes a bar. */
export function musicXmlFile(bars: number, { pick }: Chance): string {
  const measures = Array.from(
    { length: bars },
    (_, bar) =>
      `<measure number="${bar + 1}">${
        bar === 0
          ? '<attributes><divisions>2</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>'
          : ''
      }<harmony>${pick(HARMONIES)}</harmony>${NOTE.repeat(8)}</measure>`,
  );
  return (
    '<?xml version="1.0"?><score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Line</part-name>' +
    `</score-part></part-list><part id="P1">${measures.join('')}</part></score-partwise>`
  );
}
