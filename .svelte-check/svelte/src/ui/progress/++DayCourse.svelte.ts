///<reference types="svelte" />
;
import type { ProgressDay } from '../../core/practice/progress.ts';
;

  interface Props {
    days: readonly ProgressDay[];
    goal: number;
  };function $$render() {

  

  let { days, goal }: Props = $props();

  /** Days that have room side by side; earlier ones are left out. */
  const MOST_DAYS = 16;
  const STEP = 10;
  const HEIGHT = 60;
  const EDGE = 5;

  const shown = $derived(days.slice(-MOST_DAYS));
  const yOf = (share: number) => HEIGHT - EDGE - share * (HEIGHT - 2 * EDGE);
;
async () => {


 { svelteHTML.createElement("svg", {   "viewBox":`0 0 ${MOST_DAYS * STEP} ${HEIGHT}`,"aria-hidden":`true`,});
   { svelteHTML.createElement("line", {          "class":`shore`,"x1":`0`,"x2":MOST_DAYS * STEP,"y1":yOf(goal),"y2":yOf(goal),});}
      for(let { day, share, low, high } of __sveltets_2_ensureArray(shown)){let i = 1;day;
    if(share !== null && low !== null && high !== null){
      const x = (i + 0.5) * STEP;
       { svelteHTML.createElement("line", {          "class":`doubt`,"x1":x,"x2":x,"y1":yOf(low),"y2":yOf(high),});}
       { svelteHTML.createElement("ellipse", {          "cx":x,"cy":yOf(share),"rx":`4`,"ry":`3`,"transform":`rotate(-22 ${x} ${yOf(share)})`,});}
    }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const DayCourse__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type DayCourse__SvelteComponent_ = ReturnType<typeof DayCourse__SvelteComponent_>;
/*Ωignore_endΩ*/export default DayCourse__SvelteComponent_;