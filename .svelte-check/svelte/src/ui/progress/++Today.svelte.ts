///<reference types="svelte" />
;
import type { DueChange } from '../../core/practice/progress.ts';
import ChordSymbol from '../parts/ChordSymbol.svelte';
import { spokenChord } from '../parts/engrave.ts';
import HelpLink from '../parts/HelpLink.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import { keyWords } from '../parts/sentences.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    due: readonly DueChange[];
    formName: (form: string) => string;
    onpractise: (change: DueChange) => void;
  };function $$render() {

  
  
  
  
  
  
  

  let { due, formName, onpractise }: Props = $props();
  const words = useWords();

  const spoken = ({ from, to }: DueChange) =>
    from === null
      ? spokenChord(to, words)
      : words.progress.change({ from: spokenChord(from, words), to: spokenChord(to, words) });
;
async () => {


 { svelteHTML.createElement("section", { "aria-labelledby":`today`,});
   { svelteHTML.createElement("h2", { "id":`today`,}); { const $$_kniLpleH2C = __sveltets_2_ensureComponent(HelpLink); new $$_kniLpleH2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"entry":`due`,}});words.progress.today; HelpLink} }
  if(due.length === 0){
     { svelteHTML.createElement("p", { "class":`none`,});words.progress.nothingDue; }
  }else{
     { svelteHTML.createElement("p", { "class":`why`,});words.progress.why; }
     { svelteHTML.createElement("ol", {});
         for(let change of __sveltets_2_ensureArray(due)){`${change.form} ${change.key} ${change.from} ${change.to}`;
         { svelteHTML.createElement("li", {});
           { svelteHTML.createElement("p", { "class":`change`,});
             { svelteHTML.createElement("span", { "class":`only-heard`,});spoken(change); }
             { svelteHTML.createElement("span", {   "class":`chords`,"aria-hidden":`true`,});
              if(change.from !== null){ { const $$_lobmySdrohC5C = __sveltets_2_ensureComponent(ChordSymbol); new $$_lobmySdrohC5C({ target: __sveltets_2_any(), props: {  "symbol":change.from,}});} { svelteHTML.createElement("span", { "class":`way`,}); }}
               { const $$_lobmySdrohC5C = __sveltets_2_ensureComponent(ChordSymbol); new $$_lobmySdrohC5C({ target: __sveltets_2_any(), props: {  "symbol":change.to,}});}
             }
           }
           { svelteHTML.createElement("p", { "class":`facts`,});
             { svelteHTML.createElement("b", {});words.parts.titleInKey({ title: formName(change.form), key: keyWords(change.key, words) }); } { svelteHTML.createElement("br", {});}
            words.progress.met({ hits: change.hits, of: change.of });
            words.progress.lastPlayed({ days: change.daysAgo });
           }
           { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"aria-label":words.progress.practiseNamed({ change: spoken(change) }),"onclick":() => onpractise(change),}});words.progress.practise;  PlainButton}
         }
      }
     }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Today__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Today__SvelteComponent_ = ReturnType<typeof Today__SvelteComponent_>;
/*Ωignore_endΩ*/export default Today__SvelteComponent_;