///<reference types="svelte" />
;
import { untrack } from 'svelte';
import { keyAt } from '../../core/chart/keys-through.ts';
import type { Timeline } from '../../core/chart/timeline.ts';
import { spelledNote } from '../../core/words/spelling.ts';
import type { PlayingSettings } from '../../state/playing-settings.ts';
import type { LiveMoment } from '../../state/session.svelte.ts';
import { sizedContext, sizeOf } from '../parts/canvas-size.ts';
import { eachFrame } from '../parts/frames.ts';
import { inksNow, type Inks } from '../parts/inks.ts';
import { InstrumentPage } from './instrument-page.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    live: () => LiveMoment | null;
    timeline: Timeline;
    settings: PlayingSettings;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  

  let { live, timeline, settings }: Props = $props();
  const words = useWords();

  // What can be set while playing (level, tempo) does not touch the picture: the hand stays where it was.
  const page = untrack(
    () =>
      new InstrumentPage(
        settings,
        (beat) => keyAt(timeline, beat),
        (name) => spelledNote(name, words),
      ),
  );
  let drawnIn: Inks | null = null;

  function draw(canvas: HTMLCanvasElement) {
    const moment = live();
    const inks = inksNow();
    if (moment === null) return;
    // A still page is not drawn again: the picture only changes with the chord, the note, the room or the light.
    const { width, height } = sizeOf(canvas);
    if (!page.follow(moment, width, height) && inks === drawnIn) return;
    drawnIn = inks;
    const sized = sizedContext(canvas);
    if (sized !== null) page.draw({ ...sized, inks });
  }
;
async () => {


 { svelteHTML.createElement("canvas", {  "aria-hidden":`true`,[Symbol("@attach")]:eachFrame(draw),}); }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const InstrumentView__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type InstrumentView__SvelteComponent_ = ReturnType<typeof InstrumentView__SvelteComponent_>;
/*Ωignore_endΩ*/export default InstrumentView__SvelteComponent_;