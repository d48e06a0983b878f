///<reference types="svelte" />
;
import Logo from '../parts/Logo.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    /** 0 to 1. */
    progress: number;
  };function $$render() {

  
  

  let { progress }: Props = $props();
  const words = useWords();
;
async () => {


 { svelteHTML.createElement("div", { "class":`page`,});
   { svelteHTML.createElement("header", {}); { const $$_ogoL2C = __sveltets_2_ensureComponent(Logo); new $$_ogoL2C({ target: __sveltets_2_any(), props: {}});} }
   { svelteHTML.createElement("main", { "tabindex":-1,});
     { svelteHTML.createElement("svg", {   "viewBox":`0 0 320 80`,"aria-hidden":`true`,});
       { svelteHTML.createElement("path", {    "class":`shore`,"d":`M0 56H320`,});}
       { svelteHTML.createElement("path", {        "class":`line`,"pathLength":`1`,"d":`M0 20C30 -8 60 -4 84 28S128 82 156 64S196 22 222 28S258 56 286 56`,});__sveltets_2_ensureType(String, Number, 1 - progress);}
      if(progress >= 1){ { svelteHTML.createElement("ellipse", {          "cx":`292`,"cy":`56`,"rx":`13`,"ry":`9.5`,"transform":`rotate(-22 292 56)`,});}}
     }
     { svelteHTML.createElement("h1", {});words.grading.naming; }
     { svelteHTML.createElement("progress", {     "class":`only-heard`,"value":progress,"aria-label":words.grading.progress,}); }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const GradingScreen__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type GradingScreen__SvelteComponent_ = ReturnType<typeof GradingScreen__SvelteComponent_>;
/*Ωignore_endΩ*/export default GradingScreen__SvelteComponent_;