/** The earlier takes, at the end of the open page. */
import { several, decimal } from './grammar.ts';
import type { takes as english } from '../en/takes.ts';
import type { Translated } from '../entries/translated.ts';

/** Platz auf einem Datenträger: „5,5 MB“, „340 MB“, „12,3 GB“. */
const diskRoom = (megabytes: number): string =>
  megabytes < 1000
    ? `${decimal(megabytes, megabytes < 10 ? 1 : 0)} MB`
    : `${decimal(megabytes / 1000, 1)} GB`;

export const takes: Translated<typeof english> = {
  heading: 'Frühere Takes',
  cutOff: 'Ein Take brach ab:',
  kept: ({ length }) => `${length} davon ist erhalten.`,
  grade: 'Bewerten',
  throwAway: 'Wegwerfen',
  remove: 'Entfernen',
  removeNamed: ({ title }) => `${title} entfernen`,
  removeForGood: 'Endgültig entfernen',
  heldOnly: 'Nur die mit Stern',
  keep: 'Behalten',
  saveAll: 'Alle Takes in einer Datei speichern',
  size: ({ megabytes }) => diskRoom(megabytes),
  room: ({ megabytes, freeMegabytes }) =>
    `Der Klang aller Takes braucht ${diskRoom(megabytes)}${freeMegabytes === null ? '' : `; ${diskRoom(freeMegabytes)} sind frei`}.`,
  roomIsShort: ({ takes, megabytes }) =>
    `Der Datenträger ist fast voll. Der Klang ${takes === 1 ? 'des ältesten Takes' : `der ${takes} ältesten Takes`} ohne Stern braucht ${diskRoom(megabytes)}; Bewertungen und Töne bleiben, wenn er entfernt wird.`,
  removeOldSound: 'Diesen Klang entfernen',
  bringIn: 'Takes aus Dateien holen',
  comingIn: ({ done, of }) => `Wird geholt: ${done} von ${of}`,
  goingOut: ({ done, of }) => `Wird gespeichert: ${done} von ${of}`,
  recording: 'Aufnahme',
  notGraded: 'noch nicht bewertet',
  noLandings: 'keine Landungen',
  thirds: ({ thirds, landings }) => `Terz bei ${thirds} von ${several(landings, 'Landung', 'Landungen')}`,
};
