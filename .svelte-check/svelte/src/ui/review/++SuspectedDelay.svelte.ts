///<reference types="svelte" />
;
import { delaySentence } from '../../core/report/sentences.ts';
import type { SuspectedDelay } from '../../core/take/schema.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
import type { DelayActions } from './suspected-actions.ts';
;

  interface Props {
    suspected: SuspectedDelay;
    actions: DelayActions;
  };function $$render() {

  
  
  
  
  

  let { suspected, actions }: Props = $props();
  const words = useWords();
  const ms = $derived(Math.abs(Math.round(suspected.ms)));
;
async () => {


 { svelteHTML.createElement("p", {});delaySentence(suspected, words); }
if(suspected.isOnlyOne){
   { const $$_nottuBnialP0C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP0C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":actions.ontake,}});
    words.review.takeDelay({ ms, isLate: suspected.ms > 0, stays: actions.stays });
   PlainButton}
} else if (actions.onsoundcheck !== null){
   { const $$_nottuBnialP0C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP0C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":actions.onsoundcheck,}});words.review.openSoundCheck; PlainButton}
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const SuspectedDelay__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type SuspectedDelay__SvelteComponent_ = ReturnType<typeof SuspectedDelay__SvelteComponent_>;
/*Ωignore_endΩ*/export default SuspectedDelay__SvelteComponent_;