import { describe, expect, it } from 'vitest';
import { bad } from '../../src/core/base/outcome.ts';
import { readChartFile } from '../../src/core/files/charts/read-chart-file.ts';
import { writeMusicXml } from '../../src/core/files/charts/write-musicxml.ts';
import { Charts } from '../../src/storage/charts.ts';
import { Songbook, type ChartFiles } from '../../src/state/songbook.svelte.ts';
import { english } from '../english.ts';
import { freshDatabase } from '../storage/fakes.ts';

const saved: { readonly blob: Blob; readonly fileName: string }[] = [];

const readHere: ChartFiles['read'] = async (file) =>
  readChartFile(new Uint8Array(await file.arrayBuffer()), file.name);

async function songbookOn(charts: Charts, read = readHere) {
  let count = 0;
  const songbook = new Songbook({
    charts,
    files: { save: (blob, fileName) => void saved.push({ blob, fileName }) },
    newId: () => `chart-${count++}`,
    chartFiles: () =>
      Promise.resolve({
        read,
        write: writeMusicXml,
      }),
  });
  await songbook.load();
  return songbook;
}
const titles = (songbook: Songbook) => songbook.charts.map(({ title }) => title);

describe('Songbook', () => {
  it('stops reading a file: nothing comes of it, not even a problem', async () => {
    const signals: AbortSignal[] = [];
    const songbook = await songbookOn(new Charts(await freshDatabase()), (_, signal) => {
      signals.push(signal);
      return new Promise((resolve) =>
        signal.addEventListener('abort', () => resolve(bad('listener.stopped'))),
      );
    });
    const opening = songbook.open(new File(['| C |'], 'chart.txt'));
    await expect.poll(() => signals.length).toBe(1);
    expect(songbook.isReading).toBe(true);
    songbook.stopReading();
    expect(songbook.isReading).toBe(false);
    expect(await opening).toBeNull();
    expect(signals[0]!.aborted).toBe(true);
    expect(songbook.notices).toEqual([]);
  });

  it('keeps charts from one visit to the next, by title', async () => {
    const charts = new Charts(await freshDatabase());
    const songbook = await songbookOn(charts);
    await songbook.keep(' Shore ', '| Dm7 | G7 | Cmaj7 | % |');
    await songbook.keep('Harbour', 'key: Bb\n| Cm7 | F7 |');
    expect(titles(await songbookOn(charts))).toEqual(['Harbour', 'Shore']);
    expect(songbook.withText('key: Bb\n| Cm7 | F7 |')).toMatchObject({ title: 'Harbour', key: 'Bb' });
    expect(songbook.withText('| C |')).toBeNull();
  });

  it('writes over the chart of the same title, renames and removes', async () => {
    const songbook = await songbookOn(new Charts(await freshDatabase()));
    await songbook.keep('Shore', '| C7 |');
    await songbook.keep('Shore', '| C7 | F7 |');
    expect(songbook.charts).toHaveLength(1);
    const id = songbook.charts[0]!.id;
    await songbook.rename(id, 'Coast');
    expect(songbook.charts).toMatchObject([{ id, title: 'Coast', chartText: '| C7 | F7 |' }]);
    await songbook.rename(id, '  ');
    expect(titles(songbook)).toEqual(['Coast']);
    await songbook.remove(id);
    expect(songbook.charts).toEqual([]);
  });

  it('keeps nothing that can’t be read', async () => {
    const songbook = await songbookOn(new Charts(await freshDatabase()));
    await songbook.keep('Shore', '| H7 |');
    await songbook.keep('', '| C7 |');
    expect(songbook.charts).toEqual([]);
  });

  it('saves a chart as a score and opens it again', async () => {
    const songbook = await songbookOn(new Charts(await freshDatabase()));
    await songbook.save('Shore', '| Dm7 | G7 | Cmaj7 | N.C. |');
    const { blob, fileName } = saved.at(-1)!;
    expect(fileName).toBe('Shore.musicxml');
    const opened = await songbook.open(new File([blob], fileName));
    expect(opened).toContain('| Dm7 | G7 | Cmaj7 | N.C. |');
    expect(opened).toContain('title: Shore');
    expect(await songbook.open(new File(['<svg/>'], 'drawing.xml'))).toBeNull();
    expect(songbook.notices.map(english).join()).toMatch(/drawing\.xml/);
  });

  it('tells a failure once the list is as it is', async () => {
    const charts = new Charts(await freshDatabase());
    charts.save = () => Promise.resolve(bad('storage.diskFull'));
    const songbook = await songbookOn(charts);
    await songbook.keep('Shore', '| C7 |');
    expect(songbook.notices).toEqual([{ code: 'storage.diskFull' }]);
    expect(english(songbook.notices[0]!)).not.toMatch(/take/);
  });
});
