/** The font of musical signs: loaded before anything is drawn, because VexFlow measures its signs. */
import { VexFlow } from 'vexflow/core';

const NAME = 'Landfall Music';

/** Resolves when the signs can be drawn and measured; without the font they are drawn as boxes, but drawn. */
export async function musicFont(): Promise<void> {
  VexFlow.setFonts(NAME, 'sans-serif');
  // A clef asks for the file; text alone would not, as these signs are no letters.
  await document.fonts.load(`30px '${NAME}'`, '\ue050').catch(() => undefined);
}
