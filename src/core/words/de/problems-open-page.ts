/** Problems that the open page has to tell alone: the site, what is kept on this machine, MIDI. */
import type { problemsOfOpenPage as english } from '../en/problems-open-page.ts';
import type { Translated } from '../entries/translated.ts';

export const problemsOfOpenPage: Translated<typeof english> = {
  'midi.unsupported':
    'Dieser Browser hat kein Web MIDI; Chrome, Edge und Firefox haben es. Das Mikrofon geht trotzdem.',
  'midi.refused':
    'Der Browser durfte MIDI nicht benutzen. Erlaube es neben der Adresse, dann wähle es noch einmal; das Mikrofon geht trotzdem.',
  'site.partMissing':
    'Der Rest von Landfall war nicht zu laden: Der Server antwortet nicht. Nichts ist verloren. Versuch es noch einmal, wenn er antwortet: Dann wird diese Seite neu geladen.',
  'site.otherWindow':
    'Landfall ist noch in einem anderen Fenster offen, und dort läuft vielleicht ein Take. Schließ das andere Fenster und drück dann noch einmal.',
  'storage.newer':
    'Die Takes auf diesem Gerät hat ein neueres Landfall geschrieben. Lade die Seite neu, um es zu bekommen.',
  'storage.none':
    'Dieser Browser speichert für diese Seite nichts (vielleicht ist es ein privates Fenster). Du kannst spielen; speichere einen Take als Datei, um ihn zu behalten.',
  'storage.soundNeeded':
    'Die Töne dieses Takes wurden nicht mit ihm behalten; sein Klang wird für die Bewertung gebraucht und bleibt.',
  'storage.diskFull':
    'Der Speicher ist voll, darum wurde das nicht gespeichert. Schaffe Platz und versuche es dann noch einmal.',
  'storage.unreachable':
    'Der Browser kam nicht an seinen Speicher. Speichere als Datei, was auf dem Bildschirm steht, und lade dann die Seite neu.',
  'storage.settingsUnreadable': 'Die Einstellungen ließen sich nicht lesen; es gelten die üblichen.',
  'storage.settingUnreadable': ({ fields }) =>
    `Eine gespeicherte Einstellung ließ sich nicht lesen (${fields.join(', ')}); es gilt die übliche.`,
  'storage.chartUnreadable': 'Ein gespeicherter Chart ließ sich nicht lesen; die anderen sind unverändert.',
};
