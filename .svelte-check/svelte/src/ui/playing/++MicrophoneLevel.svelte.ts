///<reference types="svelte" />
;
import { eachFrame } from '../parts/frames.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    levelDb: () => number | null;
  };function $$render() {

  
  

  let { levelDb }: Props = $props();
  const words = useWords();

  /** Quieter than this is silence in most rooms. */
  const FLOOR_DB = -60;
  /** Steps of the bar: finer ones are not seen, and each costs a stroke of the brush. */
  const STEPS = 40;
  let shown = -1;

  function draw(element: HTMLElement) {
    const share = 1 - Math.min(1, Math.max(0, (levelDb() ?? FLOOR_DB) / FLOOR_DB));
    const step = Math.round(share * STEPS);
    if (step === shown) return;
    shown = step;
    element.style.transform = `scaleX(${step / STEPS})`;
  }
;
async () => {


 { svelteHTML.createElement("span", {     "class":`level`,"role":`img`,"aria-label":words.playing.microphoneLevel,});
   { svelteHTML.createElement("span", {   "class":`name`,"aria-hidden":`true`,});words.playing.microphone; }
   { svelteHTML.createElement("span", { "class":`line`,}); { svelteHTML.createElement("span", {  "class":`bar`,[Symbol("@attach")]:eachFrame(draw),}); } }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const MicrophoneLevel__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type MicrophoneLevel__SvelteComponent_ = ReturnType<typeof MicrophoneLevel__SvelteComponent_>;
/*Ωignore_endΩ*/export default MicrophoneLevel__SvelteComponent_;