///<reference types="svelte" />
;
import { withSigns } from './engrave.ts';
import { cssColour, isAshore, OPEN_MARK, ROLE_MARKS } from './roles.ts';
import type { Landing } from '../../core/take/schema.ts';
;

  interface Props {
    landing: Landing;
    /** Just now: it draws itself. */
    fresh?: boolean;
  };function $$render() {

  
  
  

  let { landing, fresh = false }: Props = $props();

  const mark = $derived(landing.role === null ? OPEN_MARK : ROLE_MARKS[landing.role]);
  const ashore = $derived(isAshore(landing.role));
  /** The shore is at y = 0. A tone that the chord names is centred on it, another is drawn half a mark above it. */
  const y = $derived(landing.role === null ? 9 : ashore ? 0 : -13);
  const tail = $derived(landing.role === null ? null : tailPath(landing, y));

  /** How the line came: from below or above by its step, or tied over where the note was held. */
  function tailPath({ kind, stepSemitones }: Landing, restY: number): string {
    if (kind === 'held') return `M-31 ${restY - 5}C-25 ${restY - 14} -15 ${restY - 14} -9 ${restY - 5}`;
    const from = restY + Math.max(-7, Math.min(7, stepSemitones ?? -4)) * 4;
    return `M-31 ${from}C-18 ${from} -20 ${restY} -7 ${restY}`;
  }
;
async () => {


 { svelteHTML.createElement("span", {   "class":`landing`,});fresh;__sveltets_2_ensureType(String, Number, cssColour(mark));
   { svelteHTML.createElement("svg", {   "viewBox":`-36 -34 50 60`,"aria-hidden":`true`,});
    if(tail){ { svelteHTML.createElement("path", {    "class":`tail`,"d":tail,});}}
     { svelteHTML.createElement("g", { "transform":`translate(0 ${y})`,}); { svelteHTML.createElement("path", {     "class":`mark`,"d":mark.path,});!mark.filled;} }
   }
  if(landing.degree !== null){
     { svelteHTML.createElement("span", {    "class":`degree`,"aria-hidden":`true`,});!ashore;withSigns(landing.degree); }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const LandingMark__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type LandingMark__SvelteComponent_ = ReturnType<typeof LandingMark__SvelteComponent_>;
/*Ωignore_endΩ*/export default LandingMark__SvelteComponent_;