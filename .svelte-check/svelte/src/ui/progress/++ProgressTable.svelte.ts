///<reference types="svelte" />
;
import type { ProgressRow } from '../../core/practice/progress.ts';
import ChordSymbol from '../parts/ChordSymbol.svelte';
import HelpLink from '../parts/HelpLink.svelte';
import { ofAll } from '../parts/sentences.ts';
import { useWords } from '../words/use-words.ts';
import DayCourse from './DayCourse.svelte';
;

  interface Props {
    title: string;
    rows: readonly ProgressRow[];
    nameOf?: (id: string) => string;
    /** The rows are named by chord symbols. */
    chords?: boolean;
  };function $$render() {

  
  
  
  
  
  

  let { title, rows, nameOf = (id) => id, chords = false }: Props = $props();
  const words = useWords();
;
async () => {


if(rows.length > 0){
   { svelteHTML.createElement("table", {});
     { svelteHTML.createElement("caption", {});title; }
     { svelteHTML.createElement("thead", { "class":`only-heard`,});
       { svelteHTML.createElement("tr", {});
         { svelteHTML.createElement("th", { "scope":`col`,});words.progress.columns.what; }
         { svelteHTML.createElement("th", { "scope":`col`,});words.progress.columns.course; }
         { svelteHTML.createElement("th", { "scope":`col`,});words.progress.columns.counts; }
       }
     }
     { svelteHTML.createElement("tbody", {});
         for(let row of __sveltets_2_ensureArray(rows)){row.id;
         { svelteHTML.createElement("tr", {});
           { svelteHTML.createElement("th", {  "scope":`row`,});chords;
            if(chords){ { const $$_lobmySdrohC4C = __sveltets_2_ensureComponent(ChordSymbol); new $$_lobmySdrohC4C({ target: __sveltets_2_any(), props: {  "symbol":row.id,}});}}else{nameOf(row.id);}
           }
           { svelteHTML.createElement("td", { "class":`course`,}); { const $$_esruoCyaD4C = __sveltets_2_ensureComponent(DayCourse); new $$_esruoCyaD4C({ target: __sveltets_2_any(), props: {    "days":row.days,"goal":row.goal,}});} }
           { svelteHTML.createElement("td", {});
             { svelteHTML.createElement("b", {});ofAll(row.hits, row.of, words); }
             { svelteHTML.createElement("span", {}); { const $$_kniLpleH5C = __sveltets_2_ensureComponent(HelpLink); new $$_kniLpleH5C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"entry":`trend`,}});words.progress.directions[row.direction]; HelpLink} }
           }
         }
      }
     }
   }
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const ProgressTable__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type ProgressTable__SvelteComponent_ = ReturnType<typeof ProgressTable__SvelteComponent_>;
/*Ωignore_endΩ*/export default ProgressTable__SvelteComponent_;