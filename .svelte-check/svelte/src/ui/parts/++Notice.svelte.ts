///<reference types="svelte" />
;
import { useWords } from '../words/use-words.ts';
;
  interface Props {
    sentence: string;
    playing: boolean;
    ondismiss: () => void;
  };function $$render() {

  

  let { sentence, playing, ondismiss }: Props = $props();
  const words = useWords();

  /** Long enough to be read twice from a stand. */
  const STANDS_MS = 15_000;
  let timedOut = $state(false);

  $effect(() => {
    if (!playing) return;
    const timer = setTimeout(() => (timedOut = true), STANDS_MS);
    return () => clearTimeout(timer);
  });
;
async () => {


if(!timedOut){
   { svelteHTML.createElement("p", { });playing;
    sentence;
     { svelteHTML.createElement("button", {     "type":`button`,"aria-label":words.parts.putAway({ sentence }),"onclick":ondismiss,});  }
   }
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Notice__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Notice__SvelteComponent_ = ReturnType<typeof Notice__SvelteComponent_>;
/*Ωignore_endΩ*/export default Notice__SvelteComponent_;