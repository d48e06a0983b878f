/** The aim that the README shows is one that the command line reads. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readAim } from '../../../../src/core/grade/aims/aim.ts';

it('the aim in the README is read', () => {
  const readme = readFileSync(new URL('../../../../README.md', import.meta.url), 'utf8');
  const [, json] = /```json\n([^`]*landfall-aim[^`]*)```/u.exec(readme) ?? [];
  expect(readAim(JSON.parse(json ?? 'null'))).toMatchObject({ ok: true, value: { id: 'seventh-over-five' } });
});
