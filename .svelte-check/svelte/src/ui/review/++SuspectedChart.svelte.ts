///<reference types="svelte" />
;
import { suspectedSentence } from '../../core/report/sentences.ts';
import type { Report } from '../../core/take/schema.ts';
import { spelledKey } from '../../core/words/spelling.ts';
import { signsInText } from '../parts/engrave.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    report: Report;
    /** Grades it there; null where that can't be done. */
    ontake: (() => void) | null;
  };function $$render() {

  
  
  
  
  
  

  let { report, ontake }: Props = $props();
  const words = useWords();

  const sentence = $derived(suspectedSentence(report, words));
  const label = $derived.by(() => {
    const { suspected, timeline } = report;
    if (suspected?.what !== 'key') return words.review.gradeThere;
    const key = spelledKey({ tonic: suspected.tonic, mode: timeline.key.mode }, words);
    return words.review.gradeInKey({ key: signsInText(key) });
  });
;
async () => {


if(sentence !== null){
   { svelteHTML.createElement("p", {});signsInText(sentence); }
  if(ontake !== null){
     { const $$_nottuBnialP0C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP0C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => ontake(),}});label; PlainButton}
  }
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const SuspectedChart__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type SuspectedChart__SvelteComponent_ = ReturnType<typeof SuspectedChart__SvelteComponent_>;
/*Ωignore_endΩ*/export default SuspectedChart__SvelteComponent_;