/** Files of any size that the growth bench grades. */
import { writeMidi } from 'midi-file';
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

/** The same as a standard MIDI file, at 120. */
export function midiFile(count: number, apart: number): Uint8Array {
  const ticksPerBeat = 960;
  const tick = (seconds: number) => Math.round(seconds * 2 * ticksPerBeat);
  const events = Array.from({ length: count }, (_, i) => {
    const noteNumber = midiAt(i);
    const on = tick(i * apart);
    const off = tick((i + 0.8) * apart);
    const previousOff = i === 0 ? 0 : tick((i - 0.2) * apart);
    return [
      { deltaTime: on - previousOff, type: 'noteOn' as const, channel: 0, noteNumber, velocity: 90 },
      { deltaTime: off - on, type: 'noteOff' as const, channel: 0, noteNumber, velocity: 0 },
    ];
  }).flat();
  return new Uint8Array(
    writeMidi({
      header: { format: 0, numTracks: 1, ticksPerBeat },
      tracks: [[...events, { deltaTime: 0, type: 'endOfTrack', meta: true }]],
    }),
  );
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
