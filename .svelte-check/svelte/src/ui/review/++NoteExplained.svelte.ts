///<reference types="svelte" />
;
import type { Report } from '../../core/take/schema.ts';
import { signsInText, withSigns } from '../parts/engrave.ts';
import PlainButton from '../parts/PlainButton.svelte';
import RoleMark from '../parts/RoleMark.svelte';
import { explainDoubtful, explainNote } from '../../core/report/explain.ts';
import { nextChoice, type LineNote } from './line-notes.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    report: Report;
    /** All notes of the report, those too that count in no share. */
    line: readonly LineNote[];
    /** A place on the line. */
    chosen: number | null;
    onchoose: (place: number) => void;
    /** The chosen note is to count, or no longer to. */
    onturn: () => void;
    /** Plays the chosen note, and stops where it ends. */
    onhear: () => void;
    /** Whether it sounds. */
    heard: boolean;
  };function $$render() {

  
  
  
  
  
  
  

  let { report, line, chosen, onchoose, onturn, onhear, heard }: Props = $props();

  const one = $derived(chosen === null ? undefined : line[chosen]);
  const note = $derived(one?.note);
  const words = useWords();
  const explanation = $derived.by(() => {
    if (one === undefined) return null;
    return one.counts ? explainNote(report, one.index, words) : explainDoubtful(one.note, report, words);
  });
;
async () => {


 { svelteHTML.createElement("div", {   "class":`explained`,"aria-live":`polite`,});
  if(one && note && explanation && chosen !== null){
     { svelteHTML.createElement("p", {  "class":`sign`,});!one.counts;
      if(note.role && one.counts){ { const $$_kraMeloR2C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR2C({ target: __sveltets_2_any(), props: {    "role":note.role,"size":`0.7em`,}});}}
      note.degree === null ? '·' : withSigns(note.degree);
     }
     { svelteHTML.createElement("div", { "class":`words`,});
       { svelteHTML.createElement("p", { "class":`reading`,}); { svelteHTML.createElement("b", {});withSigns(explanation.name); } signsInText(explanation.reading); }
       { svelteHTML.createElement("p", { "class":`place`,});explanation.place.charAt(0).toUpperCase() + explanation.place.slice(1); }
       { svelteHTML.createElement("p", {});signsInText(explanation.sentences.join(' ')); }
       { svelteHTML.createElement("p", { "class":`verbs`,});
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === 0,"onclick":() => onchoose(chosen - 1),}});words.review.noteBefore;  PlainButton}
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === line.length - 1,"onclick":() => onchoose(chosen + 1),}});words.review.noteAfter;  PlainButton}
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":onhear,}});heard ? words.review.stopHearing : words.review.hearNote; PlainButton}
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":onturn,}});words.review[nextChoice(one).word]; PlainButton}
       }
     }
  } else if (line.length === 0){
     { svelteHTML.createElement("p", {});words.review.noNote; }
  }else{
     { svelteHTML.createElement("p", { "class":`hint`,});words.review.chooseNote; }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const NoteExplained__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type NoteExplained__SvelteComponent_ = ReturnType<typeof NoteExplained__SvelteComponent_>;
/*Ωignore_endΩ*/export default NoteExplained__SvelteComponent_;