///<reference types="svelte" />
;
import Notice from './Notice.svelte';
import { describe, type Message } from '../../core/words/problem.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    messages: readonly Message[];
    /** Both hands are busy: a sentence goes by itself, and stands again when the take is over. */
    playing: boolean;
    ondismiss: (message: Message) => void;
  };function $$render() {

  
  
  

  let { messages, playing, ondismiss }: Props = $props();
  const words = useWords();
;
async () => {


 { svelteHTML.createElement("div", {   "class":`notices`,"role":`status`,});playing;
  playing; {
       for(let message of __sveltets_2_ensureArray(messages)){JSON.stringify(message);
       { const $$_ecitoN1C = __sveltets_2_ensureComponent(Notice); new $$_ecitoN1C({ target: __sveltets_2_any(), props: {     "sentence":describe(message, words),playing,"ondismiss":() => ondismiss(message),}});}
    }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Notices__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Notices__SvelteComponent_ = ReturnType<typeof Notices__SvelteComponent_>;
/*Ωignore_endΩ*/export default Notices__SvelteComponent_;