///<reference types="svelte" />
;
import { adviceBars, adviceSentence } from '../../core/report/advice-sentence.ts';
import type { Report } from '../../core/take/schema.ts';
import ChordSymbol from '../parts/ChordSymbol.svelte';
import { signsInText, withSigns } from '../parts/engrave.ts';
import { useWords } from '../words/use-words.ts';
import type { BarsToTry } from '../../state/tries.svelte.ts';
import type { AdviceVerbs } from './advice-verbs.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { noteWords } from '../parts/sentences.ts';
;

  interface Props {
    advice: Report['advice'];
    /** null where nothing can be heard. */
    verbs: AdviceVerbs | null;
    onchoose: (note: number) => void;
    ontry: (bars: BarsToTry) => void;
  };function $$render() {

  
  
  
  
  
  
  
  
  

  let { advice, verbs, onchoose, ontry }: Props = $props();
  const words = useWords();
;
async () => {


 { svelteHTML.createElement("section", { "aria-labelledby":`advice`,});
   { svelteHTML.createElement("h2", { "id":`advice`,});words.review.advice; }
   { svelteHTML.createElement("ol", {});
        for(let piece of __sveltets_2_ensureArray(advice)){let i = 1;i;
      const bars = verbs?.bars(i) ?? null;
       { svelteHTML.createElement("li", {});
         { svelteHTML.createElement("p", { "class":`bars`,});adviceBars(piece, words);   { const $$_lobmySdrohC4C = __sveltets_2_ensureComponent(ChordSymbol); new $$_lobmySdrohC4C({ target: __sveltets_2_any(), props: {  "symbol":piece.chord,}});} }
         { svelteHTML.createElement("p", { "class":`move`,});
          withSigns(piece.played.degree);
           { svelteHTML.createElement("span", {   "class":`arrow`,"aria-label":words.review.to,});  }
           { svelteHTML.createElement("b", {});withSigns(piece.resolve.degree); }
           { svelteHTML.createElement("span", { "class":`name`,});noteWords(piece.resolve.name, words); }
         }
         { svelteHTML.createElement("p", {});signsInText(adviceSentence(piece, words)); }
         { svelteHTML.createElement("p", { "class":`verbs`,});
          if(verbs !== null){
            const sounds = verbs.hearing(i);
             { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },"onclick":() => verbs.hear(i, 'yours'),}});sounds === 'yours' ? words.review.stopHearing : words.review.hearYours;  PlainButton}
             { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },"onclick":() => verbs.hear(i, 'resolved'),}});sounds === 'resolved' ? words.review.stopHearing : words.review.hearResolved;  PlainButton}
          }
             for(let note of __sveltets_2_ensureArray((piece.notes.slice(0, 1)))){note;
             { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onchoose(note),}});words.review.showNote; PlainButton}
          }
          if(bars !== null){
             { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => ontry(bars),}});words.review.tryBars(bars); PlainButton}
          }
         }
       }
    }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Advice__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Advice__SvelteComponent_ = ReturnType<typeof Advice__SvelteComponent_>;
/*Ωignore_endΩ*/export default Advice__SvelteComponent_;