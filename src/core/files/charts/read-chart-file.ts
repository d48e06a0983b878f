/** A chart out of a file of any kind that holds one, told by its content. */
import { strFromU8 } from 'fflate';
import { readChartArgument } from '../../chart/forms.ts';
import type { ChartDefaults } from '../../chart/parse-chart.ts';
import { bad, good, type Outcome } from '../../base/outcome.ts';
import { MOST_SCORE_BYTES } from '../../base/limits.ts';
import { hasMark } from '../bytes/bytes.ts';
import { unpackOne } from '../zip/unpack-one.ts';
import { readChordMarkers } from './read-chord-markers.ts';
import { readMusicXml, type ReadChartFile } from './read-musicxml.ts';
import { decodeText } from '../bytes/text.ts';
import { firstOf, readXml } from '../bytes/xml.ts';

/** Where a compressed MusicXML file says which of its files is the score (MusicXML 4.0, container). */
const CONTAINER = 'META-INF/container.xml';
/** It names one or a few files. */
const MOST_CONTAINER_BYTES = 100_000;

/**
 * Chart text, MusicXML (plain or compressed), or MIDI with chord symbols as markers.
 * @param name the file, for the problems
 * @param defaults for chart text that does not say
 */
export function readChartFile(
  bytes: Uint8Array,
  name: string,
  defaults: ChartDefaults = {},
): Outcome<ReadChartFile> {
  if (bytes.length > MOST_SCORE_BYTES) return bad('chartFile.tooLong', { name });
  if (hasMark(bytes, 'MThd')) return readChordMarkers(bytes, name);
  if (hasMark(bytes, 'PK\x03\x04')) return readCompressed(bytes, name);
  const text = decodeText(bytes);
  if (text === null) return bad('file.notText', { name });
  if (/^\s*<(?:\?xml|!DOCTYPE|!--|score-)/.test(text)) return readMusicXml(text, name);
  const chart = readChartArgument(text, defaults);
  return chart.ok
    ? good({ chart: chart.value, warnings: [] })
    : bad('chartFile.unreadable', { name, cause: chart.problem });
}

function readCompressed(bytes: Uint8Array, name: string): Outcome<ReadChartFile> {
  try {
    const container = unpackOne(bytes, CONTAINER, MOST_CONTAINER_BYTES);
    const root = container && readXml(strFromU8(container));
    const path = root ? firstOf(root, 'rootfiles', 'rootfile')?.attributes['full-path'] : undefined;
    const score = path === undefined ? null : unpackOne(bytes, path, MOST_SCORE_BYTES);
    const text = score && decodeText(score);
    return text ? readMusicXml(text, name) : bad('chartFile.noScore', { name });
  } catch {
    return bad('chartFile.damagedArchive', { name });
  }
}
