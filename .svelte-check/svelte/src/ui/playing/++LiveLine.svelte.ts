///<reference types="svelte" />
;
import type { Landing } from '../../core/take/schema.ts';
import type { LiveMoment } from '../../state/session.svelte.ts';
import { sizedContext } from '../parts/canvas-size.ts';
import { eachFrame } from '../parts/frames.ts';
import { inksNow } from '../parts/inks.ts';
import { LiveLinePen } from './live-line.ts';
;

  interface Props {
    live: () => LiveMoment | null;
    beatsPerBar: number;
    /** The newest landing. */
    landing: Landing | null;
    /** Only what was landed, and where we are. */
    quiet: boolean;
  };function $$render() {

  
  
  
  
  
  

  let { live, beatsPerBar, landing, quiet }: Props = $props();

  const pen = new LiveLinePen();

  function draw(canvas: HTMLCanvasElement) {
    const moment = live();
    const sized = sizedContext(canvas);
    if (moment === null || sized === null) return;
    pen.follow(moment, beatsPerBar);
    pen.draw(sized.context, sized.width, sized.height, moment, { beatsPerBar, landing, quiet }, inksNow());
  }
;
async () => {


 { svelteHTML.createElement("canvas", {  "aria-hidden":`true`,[Symbol("@attach")]:eachFrame(draw),}); }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const LiveLine__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type LiveLine__SvelteComponent_ = ReturnType<typeof LiveLine__SvelteComponent_>;
/*Ωignore_endΩ*/export default LiveLine__SvelteComponent_;