/**
 * The parts of the open page that are fetched once it stands: what is folded, what lies below the first screen, and what
 * only a player has who has been here before.
 */
import BackingControls from '../backing/BackingControls.svelte';
import ChartField from '../chart/ChartField.svelte';
import DiskRoom from './DiskRoom.svelte';
import DisplaySettings from './DisplaySettings.svelte';
import HandsFree from './HandsFree.svelte';
import KeptCharts from './KeptCharts.svelte';
import Lessons from './Lessons.svelte';
import PartLevels from './PartLevels.svelte';
import PracticeWays from './PracticeWays.svelte';
import Takes from './Takes.svelte';
import TakesInFiles from './TakesInFiles.svelte';
import UnfinishedTakes from './UnfinishedTakes.svelte';

export const laterParts = {
  BackingControls,
  ChartField,
  DiskRoom,
  DisplaySettings,
  HandsFree,
  KeptCharts,
  Lessons,
  PartLevels,
  PracticeWays,
  Takes,
  TakesInFiles,
  UnfinishedTakes,
};
