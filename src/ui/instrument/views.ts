/**
 * Every instrument view. A new one is a file like `draw-keyboard.ts`, a row here, and its name in the catalogues of
 * words (`ready.views`).
 */
import type { Instrument } from '../../core/music/instruments.ts';
import { keyboardView } from './draw-keyboard.ts';
import { neckView } from './draw-neck.ts';
import { staffView } from './draw-staff.ts';
import type { InstrumentView, ViewOption } from './view.ts';

export const INSTRUMENT_VIEWS = {
  neck: neckView,
  keyboard: keyboardView,
  staff: staffView,
} as const satisfies Readonly<Record<string, InstrumentView>>;

export type ViewId = keyof typeof INSTRUMENT_VIEWS;

const isViewId = (id: string): id is ViewId => Object.hasOwn(INSTRUMENT_VIEWS, id);

/** The view of this id, or null: "none", or one that there is no more. */
export const viewOf = (id: string): InstrumentView | null => (isViewId(id) ? INSTRUMENT_VIEWS[id] : null);

/** The ids of the views that an instrument can be shown in. */
export const viewsFor = (instrument: Instrument | null): readonly ViewId[] =>
  (Object.keys(INSTRUMENT_VIEWS) as ViewId[]).filter(
    (id) => instrument === null || INSTRUMENT_VIEWS[id].suits(instrument),
  );

/** Whether the view of this id has a setting. */
export const hasOption = (id: string, option: ViewOption): boolean =>
  viewOf(id)?.options.includes(option) ?? false;
