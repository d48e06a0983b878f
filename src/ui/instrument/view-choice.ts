/** Which instrument views there are, for which instruments, and what can be set of each; how they are drawn comes later. */
import type { Instrument } from '../../core/music/instruments.ts';

/** Settings that only some views have. */
export type ViewOption = 'frets' | 'leftHanded' | 'clef';

interface ViewFacts {
  readonly options: readonly ViewOption[];
  /** Whether this instrument can be shown so. */
  suits(instrument: Instrument): boolean;
}

const VIEWS = {
  neck: { options: ['frets', 'leftHanded'], suits: ({ neck }) => neck !== null },
  keyboard: { options: [], suits: () => true },
  staff: { options: ['clef'], suits: () => true },
} as const satisfies Readonly<Record<string, ViewFacts>>;

export type ViewId = keyof typeof VIEWS;

/** Whether there is a view of this id; "none" is none. */
export const isViewId = (id: string): id is ViewId => Object.hasOwn(VIEWS, id);

const factsOf = (id: ViewId): ViewFacts => VIEWS[id];

/** The ids of the views that an instrument can be shown in. */
export const viewsFor = (instrument: Instrument | null): readonly ViewId[] =>
  (Object.keys(VIEWS) as ViewId[]).filter((id) => instrument === null || factsOf(id).suits(instrument));

/** Whether the view of this id has a setting. */
export const hasOption = (id: string, option: ViewOption): boolean =>
  isViewId(id) && factsOf(id).options.includes(option);
