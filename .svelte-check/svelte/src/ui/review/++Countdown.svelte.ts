///<reference types="svelte" />
;
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    seconds: number;
    ongo: () => void;
  };function $$render() {

  
  

  let { seconds, ongo }: Props = $props();
  const words = useWords();

  let passed = $state(0);
  let staying = $state(false);
  const left = $derived(seconds - passed);

  $effect(() => {
    if (staying) return;
    const timer = setInterval(() => {
      passed += 1;
      if (passed >= seconds) {
        staying = true;
        ongo();
      }
    }, 1000);
    return () => clearInterval(timer);
  });
;
async () => {


if(!staying){
   { svelteHTML.createElement("span", {   "class":`left`,"role":`timer`,});words.review.againIn;  { svelteHTML.createElement("b", {});left; } }
   { const $$_nottuBnialP0C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP0C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => (staying = true),}});words.review.stayHere; PlainButton}
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Countdown__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Countdown__SvelteComponent_ = ReturnType<typeof Countdown__SvelteComponent_>;
/*Ωignore_endΩ*/export default Countdown__SvelteComponent_;