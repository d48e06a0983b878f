///<reference types="svelte" />
;
import { tick } from 'svelte';
import type { Naming } from './naming.ts';
import PlainButton from './PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    /** As it is called now. */
    title: string;
    naming: Naming;
  };function $$render() {

  
  
  
  

  let { title, naming }: Props = $props();
  const words = useWords();

  let writing = $state(false);
  let typed = $state('');
  let field = $state<HTMLInputElement>();

  async function write() {
    typed = naming.name;
    writing = true;
    await tick();
    field?.focus();
  }

  function keep(event: SubmitEvent) {
    event.preventDefault();
    naming.onmark({ name: typed.trim() });
    writing = false;
  }

  function leave(event: KeyboardEvent) {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    writing = false;
  }
;
async () => {


if(writing){
   { svelteHTML.createElement("form", { "onsubmit":keep,});
     { const $$_input1 = svelteHTML.createElement("input", {                "type":`text`,"maxlength":80,"autocomplete":`off`,"placeholder":title,"aria-label":words.parts.takeName,"bind:value":typed,"onkeydown":leave,});field = $$_input1;/*Ωignore_startΩ*/() => typed = __sveltets_2_any(null);/*Ωignore_endΩ*/}
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"type":`submit`,}});words.parts.keepName; PlainButton}
   }
}else{
   { svelteHTML.createElement("button", {           "class":`hold`,"aria-pressed":naming.starred,"aria-label":words.parts.holdTake({ title }),"title":words.parts.hold,"onclick":() => naming.onmark({ starred: !naming.starred }),});
     { svelteHTML.createElement("svg", {   "viewBox":`0 0 24 24`,"aria-hidden":`true`,});
       { svelteHTML.createElement("path", {  "d":`M12 2.5l2.9 6.4 6.9.8-5.1 4.7 1.4 6.9-6.1-3.5-6.1 3.5 1.4-6.9-5.1-4.7 6.9-.8z`,});}
     }
   }
   { const $$_nottuBnialP0C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP0C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"aria-label":words.parts.nameTake({ title }),"onclick":() => void write(),}});words.parts.name;  PlainButton}
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const TakeMarks__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type TakeMarks__SvelteComponent_ = ReturnType<typeof TakeMarks__SvelteComponent_>;
/*Ωignore_endΩ*/export default TakeMarks__SvelteComponent_;