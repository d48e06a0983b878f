/** What was odd and was mended, or is good to know. */
import { joinWith } from '../entries/entry.ts';
import { several, decimal } from './grammar.ts';
import { type Named, noun } from './phrases.ts';

/** A chart that was found in a recording, and how many of its bars are unsure. */
interface FoundChordsFacts {
  readonly bars: number;
  readonly bpm: number;
  readonly unsure: number;
  readonly chart: string;
}

export const notices = {
  'sheet.waits': ({ title }: { title: string }) =>
    `The sheet “${title}” waits until you are back on the open page.`,
  // ── of the core ──
  'cli.chordsFound': ({ name, bars, bpm, unsure, chart }: Named & FoundChordsFacts) =>
    `The chords are those that were found in ${name}: ${several(bars, 'bar')} at ${bpm}${unsure === 0 ? '' : `, ${unsure} of them unsure`}, ${chart}`,
  'library.cameIn': ({ fresh, sounds, here }: { fresh: number; sounds: number; here: number }) =>
    [
      ...(fresh > 0 ? [`${several(fresh, 'take')} ${fresh === 1 ? 'was' : 'were'} brought in`] : []),
      ...(sounds > 0 ? [`the sound of ${several(sounds, 'take')} was brought back`] : []),
      ...(here > 0
        ? [
            `${several(here, 'take')} ${here === 1 ? 'was' : 'were'} here already and stayed as ${here === 1 ? 'it was' : 'they were'}`,
          ]
        : []),
    ].join('; ') + '.',
  'library.wentOut': ({ takes }: { takes: number }) =>
    `${several(takes, 'take')} ${takes === 1 ? 'is' : 'are'} in the file.`,
  'sound.cut': ({
    name,
    promisedSeconds,
    heldSeconds,
  }: Named & { promisedSeconds: number; heldSeconds: number }) =>
    `${name} is cut short or damaged: by its header it lasts ${decimal(promisedSeconds, 1)} s, but it holds ${decimal(heldSeconds, 1)} s; what is there was taken.`,
  'sound.cutStream': ({ name }: Named) =>
    `${name} is cut short: its sound stops before its end; what is there was taken.`,
  'sound.damaged': ({ name, places, silence }: Named & { places: number | null; silence: boolean }) =>
    `${name} is damaged${places === null ? '' : ` in ${places === 1 ? 'one place' : `${places} places`}`}; ${silence ? 'silence was put there' : 'what can be read was taken'}.`,
  'sound.otherBehind': ({ name }: Named) =>
    `${name} holds another recording behind the first, with another sample rate or number of channels; only the first was taken.`,
  'flac.checkSum': ({ name }: Named) =>
    `The sound in ${name} is not the one that was encoded: their check sums differ. It was taken as it is; listen to it, or encode it again from the original.`,
  'wav.blockAlign': ({ name, frameBytes, written }: Named & { frameBytes: number; written: number }) =>
    `The header of ${name} contradicts itself: one sample of all channels takes ${frameBytes} bytes by its format, and ${written} by its block align. It was read with ${frameBytes}; listen to it, and save it again if it sounds wrong.`,
  'sound.channelTaken': ({ name, channel }: Named & { channel: number }) =>
    `The channels of ${name} almost cancel each other when they are mixed; only channel ${channel} was taken.`,
  'sound.silent': ({ name }: Named) =>
    `${name} is silent from beginning to end: look which input was recorded, and whether it was muted.`,
  'sound.noNote': ({ name }: Named) =>
    `Something sounds in ${name}, but no note of an instrument or a voice was found: listen to it, and look whether it is the right file. Test tones without overtones are not heard as notes.`,
  'sound.notNumbers': ({ name, samples }: Named & { samples: number }) =>
    `${name} has ${samples} ${samples === 1 ? 'sample that is' : 'samples that are'} no usable number; silence was put there.`,
  'midiFile.cut': ({ name }: Named) => `${name} is cut short; the notes that are there were taken.`,
  'midiFile.partTaken': ({
    name,
    parts,
    part,
    title,
    track,
    channel,
  }: Named & {
    parts: number;
    part: number;
    /** The name of the track, or null. */
    title: string | null;
    track: number | null;
    channel: number | null;
  }) => {
    const place = channel === null ? `track ${track ?? 1}` : `channel ${channel}`;
    return `${name} has ${parts} ${noun(parts, 'part')} with notes; ${title === null ? place : `"${title}" (${place})`} was taken, part ${part}.`;
  },
  'midiFile.unread': ({ name, texts }: Named & { texts: readonly string[] }) =>
    `${name}: ${texts.map((text) => `“${text}”`).join(', ')} was not read as a chord.`,
  'score.lostJumps': ({ name }: Named) =>
    `${name}: its jumps (D.C., D.S., coda) have no place to jump to; the bars are played in the order in which they are written.`,
  'score.unreadChord': ({ name, bar, what }: Named & { bar: string; what: string | null }) =>
    `${name}: in bar ${bar} ${what === null ? 'a chord without a root' : `“${what}”`} can’t be read as a chord; the chord before it goes on.`,
  'score.repeatAfterJump': ({ name }: Named) =>
    `${name}: repeats that should be played after a D.C. or D.S. are not played there.`,
  'removal.silent': ({ name }: Named) =>
    `${name} is silent, so there is nothing to take out; the take is graded as it is.`,
  'removal.notHeard': ({ take, backing }: { take: string; backing: string }) =>
    `${backing} is not heard in ${take} within 10 seconds of its start: it may be another recording or another tempo, or headphones kept it out of the microphone; the take is graded as it is.`,
  'removal.wandering':
    'The band is heard in the take, but its timing jumped several times, so it could not be taken out: some of the notes may be the band’s. Close other programs, and do a sound check before the next take.',
  'removal.slipped': ({ ms, time, more, late }: { ms: number; time: string; more: number; late: boolean }) =>
    `The timing of the band jumped by ${ms} ms at ${time}${more > 0 ? `, and ${more} more ${noun(more, 'time')} after that` : ''}: the band was taken out before and after that, but the notes after the jump are placed ${ms} ms too ${late ? 'late' : 'early'}.`,

  'band.unknownFeel': ({ feel }: { feel: string }) =>
    `The band can’t play the feel “${feel}”; it plays these bars like the others, or with the feel of --feel.`,

  // ── of the app ──
  'microphone.processing': ({ echo, noise, gain }: { echo: boolean; noise: boolean; gain: boolean }) => {
    const kept = [echo && 'echo cancellation', noise && 'noise suppression', gain && 'automatic gain'];
    const names = kept.filter((name) => name !== false);
    return `The browser left ${joinWith(names, 'and')} on, which removes notes: turn it off in the sound settings of the system.`;
  },
  'microphone.telephone':
    'This headset sends sound of telephone quality: use a wired microphone, or the one in the laptop.',
  'take.savedUngraded':
    'The take could not be graded, and is not kept here: it was saved as a file. Open that file here to grade it.',
  'take.emptyNotKept': 'No note was heard, so this take is not kept.',
  'midi.nothingPlugged': 'No MIDI instrument is plugged in yet; it will be heard as soon as it is.',
  'devices.notChecked':
    'You play through other devices than at your last sound check: do a sound check with these, it takes half a minute.',
  'band.cameBack': ({ ms, placedByIt }: { ms: number; placedByIt: boolean }) =>
    `The band came back through the microphone, ${ms} ms late: it was taken out` +
    `${placedByIt ? ', and your notes are placed by that delay' : ''}. After a sound check this is done while you play.`,
  'band.otherDelay': ({ ms, late }: { ms: number; late: boolean }) =>
    `The band came back ${ms} ms ${late ? 'later' : 'earlier'} than at your sound check: it was taken out by the delay of this take, and your notes are placed by it.`,
};
