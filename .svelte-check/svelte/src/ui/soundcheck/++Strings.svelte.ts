///<reference types="svelte" />
;
import type { TuningReading } from '../../state/tuning-check.ts';
import { centsWords, noteWords } from '../parts/sentences.ts';
import { describeTuning } from './describe-measurements.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    tuning: TuningReading;
  };function $$render() {

  
  
  
  

  let { tuning }: Props = $props();
  const words = useWords();
;
async () => {


 { svelteHTML.createElement("ul", {});
      for(let { name, cents } of __sveltets_2_ensureArray(tuning.strings)){let i = 1;i;
     { svelteHTML.createElement("li", { });cents !== null;
       { svelteHTML.createElement("strong", {});noteWords(name, words); }
       { svelteHTML.createElement("span", {});cents === null ? words.soundCheck.notPlayed : centsWords(cents, words); }
     }
  }
 }
 { svelteHTML.createElement("p", {});describeTuning(tuning, words); }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Strings__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Strings__SvelteComponent_ = ReturnType<typeof Strings__SvelteComponent_>;
/*Ωignore_endΩ*/export default Strings__SvelteComponent_;