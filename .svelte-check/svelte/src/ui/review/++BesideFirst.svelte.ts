///<reference types="svelte" />
;
import { aimChoiceOf } from '../../core/grade/aims/targets.ts';
import { aimEvidence } from '../../core/report/aim-sentences.ts';
import { besideFirst } from '../../core/report/beside-first.ts';
import { spelledChord } from '../../core/words/spelling.ts';
import type { Landing, Report } from '../../core/take/schema.ts';
import type { BarsToTry } from '../../state/tries.svelte.ts';
import ChordSymbol from '../parts/ChordSymbol.svelte';
import { signsInText, withSigns } from '../parts/engrave.ts';
import RoleMark from '../parts/RoleMark.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    first: Report;
    now: Report;
    bars: BarsToTry;
  };function $$render() {
 const marks/*Ωignore_positionΩ*/ = (landings: readonly Landing[])/*Ωignore_startΩ*/: ReturnType<import('svelte').Snippet>/*Ωignore_endΩ*/ => { async ()/*Ωignore_positionΩ*/ => {
      for(let { role, degree, kind } of __sveltets_2_ensureArray(landings)){let i = 1;i;
     { svelteHTML.createElement("span", { "class":`mark`,});
      if(role !== null && kind !== 'open'){ { const $$_kraMeloR1C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR1C({ target: __sveltets_2_any(), props: {   role,"size":`0.8em`,}});}degree === null
          ? ''
          : withSigns(degree);
      }else{ { const $$_kraMeloR1C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR1C({ target: __sveltets_2_any(), props: {      "role":null,"size":`0.8em`,"label":words.review.besideRest,}});}}
     }
  }
     { svelteHTML.createElement("span", { "class":`rest`,});  }
  
};return __sveltets_2_any(0)};
  
  
  
  
  
  
  
  
  
  

  let { first, now, bars }: Props = $props();
  const words = useWords();

  const aimOf = (report: Report) => report.aims.find(({ tried }) => tried);
  const aims = $derived({ first: aimOf(first), now: aimOf(now) });
  const compared = $derived(besideFirst(first, now, bars, aimChoiceOf(aims.now?.id ?? '').tones));
;
async () => {




 { svelteHTML.createElement("section", { "aria-labelledby":`beside`,});
   { svelteHTML.createElement("h2", { "id":`beside`,});words.review.beside; }
   { svelteHTML.createElement("p", { "class":`told`,});
    words.review.besideCounts({ ...compared, ...bars });
    words.review.besideVerdicts[compared.verdict];
   }
   { svelteHTML.createElement("table", {});
     { svelteHTML.createElement("thead", {});
       { svelteHTML.createElement("tr", {});
         { svelteHTML.createElement("td", {}); }
         { svelteHTML.createElement("th", { "scope":`col`,});words.review.besideFirst; }
         { svelteHTML.createElement("th", { "scope":`col`,});words.review.besideNow; }
       }
     }
     { svelteHTML.createElement("tbody", {});
          for(let change of __sveltets_2_ensureArray(compared.changes)){let i = 1;i;
         { svelteHTML.createElement("tr", {});
           { svelteHTML.createElement("th", {    "scope":`row`,"aria-label":words.review.besideChange({
              bar: change.bar,
              chord: spelledChord(change.chord, words),
            }),}); { svelteHTML.createElement("span", { "class":`bar`,});change.bar; }  { const $$_lobmySdrohC5C = __sveltets_2_ensureComponent(ChordSymbol); new $$_lobmySdrohC5C({ target: __sveltets_2_any(), props: {  "symbol":change.chord,}});} }
           { svelteHTML.createElement("td", {});;__sveltets_2_ensureSnippet(marks(change.first)); }
           { svelteHTML.createElement("td", {});;__sveltets_2_ensureSnippet(marks(change.now)); }
         }
      }
      if(aims.first && aims.now && aims.first.id === aims.now.id){
         { svelteHTML.createElement("tr", { "class":`aim`,});
           { svelteHTML.createElement("th", { "scope":`row`,});words.review.besideAim; }
           { svelteHTML.createElement("td", {});signsInText(aimEvidence(aims.first, words)); }
           { svelteHTML.createElement("td", {});signsInText(aimEvidence(aims.now, words)); }
         }
      }
     }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const BesideFirst__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type BesideFirst__SvelteComponent_ = ReturnType<typeof BesideFirst__SvelteComponent_>;
/*Ωignore_endΩ*/export default BesideFirst__SvelteComponent_;