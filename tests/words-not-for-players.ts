/** Files with strings that look like sentences and that no player reads, each with its reason. */
export const NOT_FOR_PLAYERS: Readonly<Record<string, string>> = {
  'cli/licences.ts': 'A heading of the collected licences, which are in English.',
  'state/grade-command.ts': 'A command for a terminal.',
  'core/chart/form-data.ts':
    'Names of forms, as charts and settings ask for them; the screens show those of the catalogue.',
  'core/music/instruments.ts':
    'Names of instruments, as the report has them; the screens show those of the catalogue.',
  'ui/App.svelte': 'A selector of elements.',
};
