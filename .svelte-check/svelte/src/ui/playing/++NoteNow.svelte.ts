///<reference types="svelte" />
;
import type { LiveNote } from '../../state/session.svelte.ts';
import { noteWords } from '../parts/sentences.ts';
import { withSigns } from '../parts/engrave.ts';
import RoleMark from '../parts/RoleMark.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    /** The last note heard; kept while nothing sounds, so that a glance still finds it. */
    note: LiveNote | null;
    sounding: boolean;
  };function $$render() {

  
  
  
  
  

  let { note, sounding }: Props = $props();
  const words = useWords();

  const cents = $derived(note === null ? 0 : Math.round(note.cents));
;
async () => {


 { svelteHTML.createElement("div", {    "class":`note`,"aria-hidden":`true`,});!sounding && note !== null;
  if(note === null){
     { svelteHTML.createElement("span", { "class":`waiting`,});words.playing.listening; }
  }else{
     { svelteHTML.createElement("span", { "class":`degree`,});
      if(note.role){ { const $$_kraMeloR2C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR2C({ target: __sveltets_2_any(), props: {    "role":note.role,"size":`0.62em`,}});}}
      note.degree === null ? '·' : withSigns(note.degree);
     }
     { svelteHTML.createElement("span", { "class":`pitch`,});
       { svelteHTML.createElement("span", { "class":`name`,});noteWords(note.name, words); }
       { svelteHTML.createElement("span", { "class":`cents`,});cents === 0 ? '' : cents < 0 ? '−' : '+';Math.abs(cents); }
       { svelteHTML.createElement("span", {  "class":`scale`,}); { svelteHTML.createElement("span", {   "class":`needle`,});__sveltets_2_ensureType(String, Number, ` ${Math.max(-50, Math.min(50, cents))} `); } }
     }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const NoteNow__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type NoteNow__SvelteComponent_ = ReturnType<typeof NoteNow__SvelteComponent_>;
/*Ωignore_endΩ*/export default NoteNow__SvelteComponent_;