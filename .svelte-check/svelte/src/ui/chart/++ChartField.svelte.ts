///<reference types="svelte" />
;
import { problemPlace } from './problem-place.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    text: string;
    /** What can't be read, or null. */
    problem: string | null;
    onwrite: (text: string) => void;
  };function $$render() {

  
  

  let { text, problem, onwrite }: Props = $props();
  const words = useWords();

  /** Pieces of chart text, the same in every language. */
  const EXAMPLES = { twoChords: '| Bm7 E7 |', noChord: 'N.C.', bass: 'C/E' };
  const trouble = $derived(problem === null ? null : problemPlace(text));
;
async () => {


 { svelteHTML.createElement("div", { "class":`field`,});
   { svelteHTML.createElement("label", { "for":`own-chart`,});words.ready.chart.label; }
   { svelteHTML.createElement("textarea", {                    "id":`own-chart`,"rows":4,"spellcheck":`false`,"autocapitalize":`off`,"autocomplete":`off`,"value":text,"aria-invalid":problem !== null,"aria-describedby":`own-chart-help`,"oninput":(event) => onwrite(event.currentTarget.value),"placeholder":words.ready.chart.example,}); }
   { svelteHTML.createElement("div", {   "id":`own-chart-help`,"aria-live":`polite`,});
    if(problem === null){
       { svelteHTML.createElement("p", { "class":`help`,});
        words.ready.chart.twoChords;  { svelteHTML.createElement("code", {});EXAMPLES.twoChords; }  { svelteHTML.createElement("code", {});  }
        words.ready.chart.repeat;  { svelteHTML.createElement("code", {});EXAMPLES.noChord; }
        words.ready.chart.noChord;  { svelteHTML.createElement("code", {});EXAMPLES.bass; }
        words.ready.chart.bass;
       }
    }else{
      if(trouble){
         { svelteHTML.createElement("p", {   "class":`echo`,"aria-hidden":`true`,});trouble.before; { svelteHTML.createElement("mark", {});trouble.symbol; }trouble.after; }
      }
       { svelteHTML.createElement("p", { "class":`problem`,});problem; }
    }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const ChartField__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type ChartField__SvelteComponent_ = ReturnType<typeof ChartField__SvelteComponent_>;
/*Ωignore_endΩ*/export default ChartField__SvelteComponent_;