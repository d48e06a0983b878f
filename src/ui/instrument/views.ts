/**
 * How every instrument view is drawn. A new one is a file like `draw-keyboard.ts`, a row here and in `view-choice.ts`,
 * and its name in the catalogues of words (`ready.views`).
 */
import { keyboardView } from './draw-keyboard.ts';
import { neckView } from './draw-neck.ts';
import { staffView } from './draw-staff.ts';
import type { InstrumentView } from './view.ts';
import { isViewId, type ViewId } from './view-choice.ts';

const INSTRUMENT_VIEWS: Readonly<Record<ViewId, InstrumentView>> = {
  neck: neckView,
  keyboard: keyboardView,
  staff: staffView,
};

/** The view of this id, or null: "none", or one that there is no more. */
export const viewOf = (id: string): InstrumentView | null => (isViewId(id) ? INSTRUMENT_VIEWS[id] : null);
