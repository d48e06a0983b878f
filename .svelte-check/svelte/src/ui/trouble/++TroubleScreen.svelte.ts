///<reference types="svelte" />
;
import Logo from '../parts/Logo.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import { describeProblem, type Problem } from '../../core/words/problem.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    problem: Problem;
    wayOn: 'try again' | 'back';
    onagain: () => void;
    onback: () => void;
  };function $$render() {

  
  
  
  

  let { problem, wayOn, onagain, onback }: Props = $props();
  const words = useWords();
;
async () => {


 { svelteHTML.createElement("div", { "class":`page`,});
   { svelteHTML.createElement("header", {}); { const $$_ogoL2C = __sveltets_2_ensureComponent(Logo); new $$_ogoL2C({ target: __sveltets_2_any(), props: {}});} }
   { svelteHTML.createElement("main", { "tabindex":-1,});
     { svelteHTML.createElement("svg", {   "viewBox":`0 0 300 60`,"aria-hidden":`true`,});
       { svelteHTML.createElement("path", {    "class":`shore`,"d":`M0 44H300`,});}
       { svelteHTML.createElement("path", {    "class":`line`,"d":`M0 14C30 -6 46 34 76 24S120 -4 148 12S176 30 190 26`,});}
     }
     { svelteHTML.createElement("h1", {});describeProblem(problem, words); }
     { svelteHTML.createElement("p", { "class":`verbs`,});
      if(wayOn === 'try again'){
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"strong":true,"onclick":onagain,}});words.trouble.tryAgain; PlainButton}
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":onback,}});words.trouble.back; PlainButton}
      }else{
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"strong":true,"onclick":onback,}});words.trouble.back; PlainButton}
      }
     }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const TroubleScreen__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type TroubleScreen__SvelteComponent_ = ReturnType<typeof TroubleScreen__SvelteComponent_>;
/*Ωignore_endΩ*/export default TroubleScreen__SvelteComponent_;