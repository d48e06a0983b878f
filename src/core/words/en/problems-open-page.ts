/** Problems that the open page has to tell alone: the site, what is kept on this machine, MIDI. */

export const problemsOfOpenPage = {
  'midi.unsupported':
    'This browser has no Web MIDI; Chrome, Edge and Firefox have. The microphone works without it.',
  'midi.refused':
    'The browser was not allowed to use MIDI. Allow it beside the address, then choose it again; the microphone works without it.',
  'site.partMissing':
    'The rest of Landfall could not be fetched: its server does not answer. Nothing is lost. Try again when it answers: this page is then loaded anew.',
  'site.otherWindow':
    'Landfall is open in another window, and a take may be going on there. Close the other window, then press the button again.',
  'storage.newer': 'The takes on this machine were written by a newer Landfall. Reload the page to get it.',
  'storage.none':
    'This browser stores nothing for this page (perhaps this is a private window). You can play; save a take as a file to keep it.',
  'storage.soundNeeded':
    'The notes of this take were not kept with it, so its sound is needed to grade it and stays.',
  'storage.diskFull': 'The disk is full, so this was not saved. Make room on it, then try again.',
  'storage.unreachable':
    'This browser could not reach its storage. Save what is on the screen as files, then reload the page.',
  'storage.settingsUnreadable': 'The settings could not be read; the usual ones are set.',
  'storage.settingUnreadable': ({ fields }: { fields: readonly string[] }) =>
    `A stored setting could not be read (${fields.join(', ')}); the usual one is set.`,
  'storage.chartUnreadable': 'A stored chart could not be read; the others are unchanged.',
};
