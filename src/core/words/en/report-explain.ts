/** A note, a landing or a bar explained: what was heard, and the rule behind its grade. */
import { percent, decimal } from './grammar.ts';
import { capital, trimmed, inBrackets } from './phrases.ts';

interface ArrivalFacts {
  readonly chord: string;
  readonly degree: string;
}

/** Against the nearest eighth or a change, in ms; negative is early. A difference under 10 ms can’t be heard. */
function lateness(ms: number): string {
  const rounded = Math.round(Math.abs(ms));
  return rounded < 10 ? 'on time' : `${rounded} ms ${ms < 0 ? 'early' : 'late'}`;
}

function inCents(cents: number): string {
  const rounded = Math.round(cents);
  return rounded === 0 ? 'in tune' : `${rounded < 0 ? '−' : '+'}${Math.abs(rounded)} cents`;
}

export const explain = {
  beforeFirstBar: 'before the first bar',
  /** `beat` with quarters of a beat as fractions: "2½". */
  place: ({ bar, beat, chorus }: { bar: number; beat: string; chorus: number }) =>
    `bar ${bar}, beat ${beat}${chorus === 1 ? '' : `, chorus ${chorus}`}`,
  /** What a note is over its chord. */
  role: {
    root: ({ chord }: { chord: string }) => `the root of ${chord}`,
    third: ({ chord }: { chord: string }) => `the third of ${chord}`,
    fifth: ({ chord }: { chord: string }) => `the fifth of ${chord}`,
    seventh: ({ chord }: { chord: string }) => `the seventh of ${chord}`,
    extension: ({ chord }: { chord: string }) => `an extension that ${chord} names`,
    colour: ({ chord }: { chord: string }) => `a scale tone over ${chord}`,
    blue: ({ chord }: { chord: string }) => `a blue note over ${chord}`,
    outside: ({ chord }: { chord: string }) => `outside ${chord} and the scales`,
  },
  noChord: 'no chord under it',
  degrees: ({ degree, keyDegree, key }: { degree: string | null; keyDegree: string; key: string }) =>
    degree === null ? `${keyDegree} of ${key}.` : `${degree} of the chord, ${keyDegree} of ${key}.`,
  /** Against the reference and the nearest eighth; null where the time is not known. */
  tuning: ({ cents, offsetMs }: { cents: number; offsetMs: number | null }) =>
    `${capital(inCents(cents))}${offsetMs === null ? '' : `, ${lateness(offsetMs)}`}.`,
  /** Of a note that counts in no share; the confidence from 0 to 1. */
  doubtful: ({ confidence }: { confidence: number }) =>
    `The listener is not sure of this note (confidence ${percent(confidence)}), so it counts in no share.`,
  takenOut: 'You took this note out, so it counts in no share.',
  /** Of a note that counts because the player wants it to. */
  chosen: ({ confidence }: { confidence: number }) =>
    `The listener was not sure of this note (confidence ${percent(confidence)}); it counts because you chose so.`,
  second: ({ name }: { name: string }) => `${name} sounds with it.`,
  manner: ({
    bend,
    legato,
    vibrato,
  }: {
    /** In semitones; null for a note that is not bent. */
    bend: number | null;
    legato: boolean;
    vibrato: boolean;
  }) => {
    const ways = [
      ...(bend === null ? [] : [`bent by ${decimal(bend, 1)} semitones`]),
      ...(legato ? ['slurred'] : []),
      ...(vibrato ? ['with vibrato'] : []),
    ];
    return `${capital(ways.join(', '))}.`;
  },
  /** 0 to 1, by the length. */
  weight: ({ weight }: { weight: number }) => `Weight ${decimal(weight, 2)} by its length.`,
  standing: ({ strongBeat, phraseEnd }: { strongBeat: boolean; phraseEnd: boolean }) => {
    const facts = [...(strongBeat ? ['on a strong beat'] : []), ...(phraseEnd ? ['ends its phrase'] : [])];
    return facts.length === 0 ? '' : `${capital(facts.join(', '))}.`;
  },
  rule: {
    onset: ({ chord }: { chord: string }) => `${chord} sounds when it starts.`,
    anticipation: ({ beats, chord }: { beats: number; chord: string }) =>
      `It starts ${trimmed(beats)} beat before ${chord}, lasts until that arrives, and is one of its tones.`,
    onTheChange: ({ chord }: { chord: string }) =>
      `It starts so shortly before ${chord} that it counts as played on the change.`,
    noChord: 'No chord sounds when it starts.',
  },
  /** What the notes beside it make of a tone outside the chord; `notes` are those notes. */
  function: {
    passing: ({ notes }: { notes: readonly string[] }) =>
      notes.length > 1
        ? `It passes by step, all in one direction, between two chord tones${inBrackets(notes)}.`
        : `It moves on by step${inBrackets(notes)}.`,
    neighbour: ({ notes }: { notes: readonly string[] }) =>
      notes.length > 1
        ? `It is a neighbour: a step away from a chord tone and back${inBrackets(notes)}.`
        : `It turns back by step${inBrackets(notes)}.`,
    approach: ({ notes }: { notes: readonly string[] }) =>
      `It is an approach by half step into a chord tone${inBrackets(notes)}.`,
    enclosure: ({ notes }: { notes: readonly string[] }) =>
      `It is half of an enclosure: two tones, one on either side of the chord tone that they reach${inBrackets(notes)}.`,
    appoggiatura: ({ notes }: { notes: readonly string[] }) =>
      notes.length > 1
        ? `It is an appoggiatura: reached by a leap, left by a step into a chord tone${inBrackets(notes)}.`
        : `It is an appoggiatura: it begins the phrase and goes by step into a chord tone${inBrackets(notes)}.`,
    escape: ({ notes }: { notes: readonly string[] }) =>
      `It is an escape tone: left by a leap against the step that led to it${inBrackets(notes)}.`,
    suspension: ({ notes }: { notes: readonly string[] }) =>
      `It is a suspension: kept from the chord before, then resolved by step${inBrackets(notes)}.`,
    anticipation: ({ notes }: { notes: readonly string[] }) =>
      `It anticipates the chord to come${inBrackets(notes)}.`,
    free: ({ notes }: { notes: readonly string[] }) =>
      `It is left by no step, so it leads to no other note${inBrackets(notes)}.`,
  },
  landing: ({ chord, degree, offsetMs }: ArrivalFacts & { offsetMs: number }) =>
    `The landing on the change to ${chord}: ${degree}, ${lateness(offsetMs)}`,
  anticipated: ({ chord, degree }: ArrivalFacts) =>
    `The landing on the change to ${chord}: ${degree}, an eighth early, as an anticipation`,
  /** Follows a landing that is on no chord tone. */
  putRight: ({ name, beats }: { name: string; beats: number }) =>
    `; the line resolves it by a step, to ${name}, ${beats < 0.05 ? 'at once' : `${trimmed(beats)} ${beats === 1 ? 'beat' : 'beats'} later`}`,
  blueThird: ({ cents }: { cents: number }) =>
    `It is a blue third, ${Math.round(cents)} cents above the b3: the blues is played so.`,
  held: ({ chord, degree }: ArrivalFacts) => `Held over the change to ${chord}, where it is the ${degree}`,
  guideTone: {
    kept: ({ from, to }: { from: string; to: string }) => `; the guide tone ${from} stays as ${to}`,
    resolved: ({ from, to }: { from: string; to: string }) =>
      `; the guide tone ${from} moves by step to ${to}`,
  },
  open: ({ chord, bar, chorus }: { chord: string; bar: number; chorus: number }) =>
    `A rest: nothing sounds at the change to ${chord} in bar ${bar}${chorus === 1 ? '' : `, chorus ${chorus}`}.`,
  emptyBar: ({ bar, chorus }: { bar: number; chorus: number | null }) =>
    `Nothing was played in bar ${bar}${chorus === null ? '' : ` of chorus ${chorus}`}.`,
};
