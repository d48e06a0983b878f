/** What was odd and was mended, or is good to know. */
import { joinWith } from '../entries/entry.ts';
import { several, decimal } from './grammar.ts';
import { noun, quoted, times } from './phrases.ts';
import type { notices as english } from '../en/notices.ts';
import type { Translated } from '../entries/translated.ts';

export const notices: Translated<typeof english> = {
  'cli.chordsFound': ({ name, bars, bpm, unsure, chart }) =>
    `Die Akkorde sind die, die in ${name} gefunden wurden: ${bars === 1 ? 'ein Takt' : `${bars} Takte`}, Tempo ${bpm}${unsure === 0 ? '' : `, davon ${unsure} unsicher`}, ${chart}`,
  'sheet.waits': ({ title }) =>
    `Das Aufgabenblatt „${title}“ wartet, bis du wieder auf der ersten Seite bist.`,
  'library.cameIn': ({ fresh, sounds, here }) =>
    [
      ...(fresh > 0 ? [`${several(fresh, 'Take', 'Takes')} geholt`] : []),
      ...(sounds > 0 ? [`der Klang von ${several(sounds, 'Take', 'Takes')} ist wieder da`] : []),
      ...(here > 0
        ? [
            `${several(here, 'Take war', 'Takes waren')} schon da und ${here === 1 ? 'blieb, wie er war' : 'blieben, wie sie waren'}`,
          ]
        : []),
    ].join('; ') + '.',
  'library.wentOut': ({ takes }) => `${several(takes, 'Take ist', 'Takes sind')} in der Datei.`,
  // ── of the core ──
  'sound.cut': ({ name, promisedSeconds, heldSeconds }) =>
    `${name} ist abgeschnitten oder beschädigt: Laut Dateikopf dauert es ${decimal(promisedSeconds, 1)} s, vorhanden sind ${decimal(heldSeconds, 1)} s; was da ist, wurde genommen.`,
  'sound.cutStream': ({ name }) =>
    `${name} ist abgeschnitten: Der Klang hört vor seinem Ende auf; was da ist, wurde genommen.`,
  'sound.damaged': ({ name, places, silence }) =>
    `${name} ist ${places === null ? '' : `an ${places === 1 ? 'einer Stelle' : `${places} Stellen`} `}beschädigt; ${silence ? 'dort steht nun Stille' : 'was zu lesen ist, wurde genommen'}.`,
  'sound.otherBehind': ({ name }) =>
    `${name} enthält hinter der ersten Aufnahme eine weitere mit anderer Abtastrate oder Kanalzahl; nur die erste wurde genommen.`,
  'flac.checkSum': ({ name }) =>
    `Der Klang in ${name} ist nicht der, der kodiert wurde: Ihre Prüfsummen sind verschieden. Er wurde genommen, wie er ist; hör hinein oder kodiere ihn noch einmal vom Original.`,
  'wav.blockAlign': ({ name, frameBytes, written }) =>
    `Der Dateikopf von ${name} widerspricht sich: Ein Abtastwert aller Kanäle hat nach seinem Format ${frameBytes} Bytes, nach seinem „block align“ ${written}. Gelesen wurde mit ${frameBytes}; hör hinein und speichere die Datei neu, wenn sie falsch klingt.`,
  'sound.channelTaken': ({ name, channel }) =>
    `Die Kanäle von ${name} löschen sich beim Mischen fast aus; nur Kanal ${channel} wurde genommen.`,
  'sound.silent': ({ name }) =>
    `${name} ist von Anfang bis Ende still: Sieh nach, welcher Eingang aufgenommen wurde und ob er stumm war.`,
  'sound.noNote': ({ name }) =>
    `In ${name} klingt etwas, aber kein Ton eines Instruments oder einer Stimme war zu finden: Hör hinein und sieh nach, ob es die richtige Datei ist. Prüftöne ohne Obertöne werden nicht als Töne gehört.`,
  'sound.notNumbers': ({ name, samples }) =>
    `${name} hat ${samples} ${noun(samples, 'Wert, der keine brauchbare Zahl ist', 'Werte, die keine brauchbaren Zahlen sind')}; dort steht nun Stille.`,
  'midiFile.cut': ({ name }) => `${name} ist abgeschnitten; die Töne, die da sind, wurden genommen.`,
  'midiFile.partTaken': ({ name, parts, part, title, track, channel }) => {
    const place = channel === null ? `Spur ${track ?? 1}` : `Kanal ${channel}`;
    return `${name} hat ${parts} ${noun(parts, 'Stimme', 'Stimmen')} mit Tönen; genommen wurde ${title === null ? place : `„${title}“ (${place})`}, Stimme ${part}.`;
  },
  'midiFile.unread': ({ name, texts }) =>
    `${name}: ${quoted(texts).join(', ')} wurde nicht als Akkord gelesen.`,
  'score.lostJumps': ({ name }) =>
    `${name}: Die Sprünge (D.C., D.S., Coda) haben kein Ziel; die Takte werden in der Reihenfolge gespielt, in der sie dastehen.`,
  'score.unreadChord': ({ name, bar, what }) =>
    `${name}: In Takt ${bar} ist ${what === null ? 'ein Akkord ohne Grundton' : `„${what}“`} nicht als Akkord zu lesen; der Akkord davor gilt weiter.`,
  'score.repeatAfterJump': ({ name }) =>
    `${name}: Wiederholungen, die nach einem D.C. oder D.S. gespielt werden sollen, werden dort nicht gespielt.`,
  'removal.silent': ({ name }) =>
    `${name} ist still, es gibt nichts herauszunehmen; der Take wird bewertet, wie er ist.`,
  'removal.notHeard': ({ take, backing }) =>
    `${backing} ist in ${take} innerhalb von 10 Sekunden um den Anfang nicht zu hören: Vielleicht ist es eine andere Aufnahme oder ein anderes Tempo, oder Kopfhörer hielten sie vom Mikrofon fern; der Take wird bewertet, wie er ist.`,
  'removal.wandering':
    'Die Band ist im Take zu hören, sprang aber mehrmals in der Zeit und ließ sich nicht herausnehmen: Einige Töne können von der Band sein. Schließ andere Programme, und mach vor dem nächsten Take einen Soundcheck.',
  'removal.slipped': ({ ms, time, more, late }) =>
    `Die Band sprang bei ${time} um ${ms} ms${more > 0 ? ` und danach noch ${times(more)}` : ''}: Sie wurde davor und danach herausgenommen, aber die Töne danach liegen ${ms} ms zu ${late ? 'spät' : 'früh'}.`,

  'band.unknownFeel': ({ feel }) =>
    `Die Band kann das Feel „${feel}“ nicht spielen; sie spielt diese Takte wie die übrigen oder im Feel von --feel.`,

  // ── of the app ──
  'microphone.processing': ({ echo, noise, gain }) => {
    const kept = [
      echo && 'Echounterdrückung',
      noise && 'Rauschunterdrückung',
      gain && 'automatische Aussteuerung',
    ];
    const names = kept.filter((name) => name !== false);
    return `Der Browser hat ${joinWith(names, 'und')} eingeschaltet gelassen; dadurch gehen Töne verloren. Schalte es in den Toneinstellungen des Systems aus.`;
  },
  'microphone.telephone':
    'Dieses Headset liefert nur Telefonqualität: Nimm ein Mikrofon mit Kabel oder das im Laptop.',
  'take.savedUngraded':
    'Der Take ließ sich nicht bewerten und ist hier nicht gespeichert; er wurde dir als Datei übergeben. Öffne diese Datei hier, um ihn zu bewerten.',
  'take.emptyNotKept': 'Es war kein Ton zu hören, darum wird dieser Take nicht gespeichert.',
  'midi.nothingPlugged': 'Noch ist kein MIDI-Instrument angeschlossen; sobald eines da ist, wird es gehört.',
  'devices.notChecked':
    'Du spielst über andere Geräte als beim letzten Soundcheck: Mach mit diesen einen Soundcheck, er dauert eine halbe Minute.',
  'band.cameBack': ({ ms, placedByIt }) =>
    `Die Band kam ${ms} ms später durch das Mikrofon zurück: Sie wurde herausgenommen` +
    `${placedByIt ? ', und deine Töne sind nach dieser Verzögerung gesetzt' : ''}. Nach einem Soundcheck geschieht das schon beim Spielen.`,
  'band.otherDelay': ({ ms, late }) =>
    `Die Band kam ${ms} ms ${late ? 'später' : 'früher'} zurück als bei deinem Soundcheck: Sie wurde nach der Verzögerung dieses Takes herausgenommen, und deine Töne sind danach gesetzt.`,
};
