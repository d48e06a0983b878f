///<reference types="svelte" />
;
import type { OnDesk, RecordingDesk } from '../../state/recording-desk.svelte.ts';
import type { Songbook } from '../../state/songbook.svelte.ts';
import Logo from '../parts/Logo.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import type { FormChoice } from '../ready/form-choice.ts';
import { describeProblem } from '../../core/words/problem.ts';
import FirstBar from './FirstBar.svelte';
import RecordingFields from './RecordingFields.svelte';
import RecordingStrip from './RecordingStrip.svelte';
import { foundSentence } from './found-sentence.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    desk: RecordingDesk;
    /** null while the file is being read. */
    lying: OnDesk | null;
    forms: readonly FormChoice[];
    songbook: Songbook;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  

  let { desk, lying, forms, songbook }: Props = $props();
  const words = useWords();

  const wrong = $derived(lying?.audition?.problem ?? null);

  function keydown(event: KeyboardEvent) {
    if (event.key === 'Escape') desk.close();
  }
;
async () => {


 { svelteHTML.createElement("svelte:window", {  "onkeydown":keydown,});}

 { svelteHTML.createElement("div", { "class":`page`,});
   { svelteHTML.createElement("header", {});
     { const $$_ogoL2C = __sveltets_2_ensureComponent(Logo); new $$_ogoL2C({ target: __sveltets_2_any(), props: {}});}
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => desk.close(),}});words.review.back; PlainButton}
   }
   { svelteHTML.createElement("main", { "tabindex":-1,});
     { svelteHTML.createElement("div", {});
       { svelteHTML.createElement("p", { "class":`name`,});lying?.name ?? desk.reading ?? ''; }
       { svelteHTML.createElement("h1", {});words.recording.title; }
     }
    if(lying === null){
       { svelteHTML.createElement("p", { "role":`status`,});words.recording.reading; }
    }else{
      const { audition, peaks, draft, found, read } = lying;
       { svelteHTML.createElement("p", {   "class":`found`,"role":`status`,});
        wrong === null ? foundSentence(found, words) : describeProblem(wrong, words);
       }
       { const $$_sdleiFgnidroceR2C = __sveltets_2_ensureComponent(RecordingFields); new $$_sdleiFgnidroceR2C({ target: __sveltets_2_any(), props: {    "setup":draft.setup,forms,songbook,}});}
       { svelteHTML.createElement("section", { "aria-label":words.recording.begins,});
        if(audition !== null && peaks !== null){ { const $$_pirtSgnidroceR3C = __sveltets_2_ensureComponent(RecordingStrip); new $$_pirtSgnidroceR3C({ target: __sveltets_2_any(), props: {   audition,peaks,draft,}});}}
         { const $$_raBtsriF3C = __sveltets_2_ensureComponent(FirstBar); new $$_raBtsriF3C({ target: __sveltets_2_any(), props: {      draft,"durationSeconds":read.line.kind === 'notes'
            ? read.line.durationSeconds
            : (audition?.durationSeconds ?? 0),"here":audition === null ? null : () => audition.seconds,}});}
       }
       { svelteHTML.createElement("div", { "class":`on`,});
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"strong":true,"disabled":!draft.setup.timeline.ok,"onclick":() => void desk.grade(),}});words.recording.grade;  PlainButton}
         { svelteHTML.createElement("p", {});words.recording.later; }
       }
    }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const RecordingScreen__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type RecordingScreen__SvelteComponent_ = ReturnType<typeof RecordingScreen__SvelteComponent_>;
/*Ωignore_endΩ*/export default RecordingScreen__SvelteComponent_;