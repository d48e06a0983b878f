///<reference types="svelte" />
;
import { aimEvidence, aimWords } from '../../core/report/aim-sentences.ts';
import type { Report } from '../../core/take/schema.ts';
import HelpLink from '../parts/HelpLink.svelte';
import { signsInText } from '../parts/engrave.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    aims: Report['aims'];
    nextAim: Report['nextAim'];
    /** Takes the next aim, and plays. */
    onnext: () => void;
  };function $$render() {

  
  
  
  
  
  

  let { aims, nextAim, onnext }: Props = $props();
  const words = useWords();

  const next = $derived(aims.find(({ id }) => id === nextAim?.id));
  const told = $derived(aims.filter(({ verdict }) => verdict !== 'not in this chart'));
;
async () => {


 { svelteHTML.createElement("section", { "aria-labelledby":`aims`,});
   { svelteHTML.createElement("h2", { "id":`aims`,}); { const $$_kniLpleH2C = __sveltets_2_ensureComponent(HelpLink); new $$_kniLpleH2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"entry":`aim`,}});words.review.aims; HelpLink} }
  if(next){
     { svelteHTML.createElement("p", { "class":`next`,}); { svelteHTML.createElement("span", {});words.review.next; } signsInText(aimWords(next, words).task); }
     { svelteHTML.createElement("p", { "class":`because`,});signsInText(aimEvidence(next, words)); }
     { svelteHTML.createElement("p", { "class":`go`,}); { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":onnext,}});words.review.playForIt; PlainButton} }
  }
   { svelteHTML.createElement("ul", {});
       for(let aim of __sveltets_2_ensureArray(told)){aim.id;
       { svelteHTML.createElement("li", { });aim.tried;
         { svelteHTML.createElement("span", {   "class":`sign ${aim.verdict.replaceAll(' ', '-')}`,"aria-hidden":`true`,}); }
         { svelteHTML.createElement("span", { "class":`name`,});signsInText(aimWords(aim, words).name); }
         { svelteHTML.createElement("span", { "class":`verdict`,});words.report.aims.verdicts[aim.verdict]; }
         { svelteHTML.createElement("span", { "class":`evidence`,});signsInText(aimEvidence(aim, words)); }
       }
    }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Aims__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Aims__SvelteComponent_ = ReturnType<typeof Aims__SvelteComponent_>;
/*Ωignore_endΩ*/export default Aims__SvelteComponent_;