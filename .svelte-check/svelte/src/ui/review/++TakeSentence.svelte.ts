///<reference types="svelte" />
;
import { goodSentences } from '../../core/report/good-sentences.ts';
import { adviceSentence } from '../../core/report/advice-sentence.ts';
import { aimAnswer, aimEvidence, aimWords } from '../../core/report/aim-sentences.ts';
import { headlineNumbers, headlineOf, timingSentence } from '../../core/report/sentences.ts';
import type { Report } from '../../core/take/schema.ts';
import { signsInText } from '../parts/engrave.ts';
import { useWords } from '../words/use-words.ts';
import SuspectedChart from './SuspectedChart.svelte';
;

  interface Props {
    report: Report;
    /** Grades it over the chart that it fits better; null where that can't be done. */
    onchart: (() => void) | null;
  };function $$render() {

  
  
  
  
  
  
  
  

  let { report, onchart }: Props = $props();
  const words = useWords();

  const good = $derived(goodSentences(report, words));
  const aim = $derived(report.aims.find(({ tried }) => tried));
  const advice = $derived(report.suspected === null ? report.advice[0] : undefined);
  /** What the headline leaves out. */
  const numbers = $derived(
    [
      ...(aim === undefined ? [] : [aimEvidence(aim, words), headlineOf(report, words)]),
      headlineNumbers(report, words),
    ].filter((sentence) => sentence !== null),
  );
  const timing = $derived(timingSentence(report, words));
;
async () => {


 { const $$_trahCdetcepsuS0C = __sveltets_2_ensureComponent(SuspectedChart); new $$_trahCdetcepsuS0C({ target: __sveltets_2_any(), props: {   report,"ontake":onchart,}});}
if(aim === undefined){
   { svelteHTML.createElement("h1", {});signsInText(headlineOf(report, words)); }
}else{
   { svelteHTML.createElement("p", { "class":`aim`,});words.review.yourAim;  { svelteHTML.createElement("b", {});signsInText(aimWords(aim, words).name); } }
   { svelteHTML.createElement("h1", {});signsInText(aimAnswer(aim, words)); }
}
 { svelteHTML.createElement("div", { "class":`after`,});
  if(good.length > 0){ { svelteHTML.createElement("p", {}); { svelteHTML.createElement("span", {});words.review.good; } good.join(' '); }}
  if(advice){
     { svelteHTML.createElement("p", {}); { svelteHTML.createElement("span", {});words.review.toTry; } signsInText(adviceSentence(advice, words)); }
  }
  if(timing !== null){ { svelteHTML.createElement("p", {}); { svelteHTML.createElement("span", {});words.review.inTime; } timing; }}
 }
if(numbers.length > 0){
   { svelteHTML.createElement("details", {});
     { svelteHTML.createElement("summary", {});words.review.numbers; }
     { svelteHTML.createElement("p", {});signsInText(numbers.join(' ')); }
   }
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const TakeSentence__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type TakeSentence__SvelteComponent_ = ReturnType<typeof TakeSentence__SvelteComponent_>;
/*Ωignore_endΩ*/export default TakeSentence__SvelteComponent_;