///<reference types="svelte" />
;
import PlainButton from '../parts/PlainButton.svelte';
import { REVIEW_KEYS } from './review-keys.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    onclose: () => void;
  };function $$render() {

  
  
  

  let { onclose }: Props = $props();
  const words = useWords();

  const open = (dialog: HTMLDialogElement) => dialog.showModal();
  const nameOf = (key: string) =>
    (words.review.keyNames as Readonly<Record<string, string>>)[key] ?? key.toUpperCase();
;
async () => {



  { svelteHTML.createElement("dialog", {      [Symbol("@attach")]:open,onclose,"onkeydown":(event) => event.stopPropagation(),"aria-labelledby":`keys-of-review`,});
   { svelteHTML.createElement("h2", { "id":`keys-of-review`,});words.review.keysTitle; }
   { svelteHTML.createElement("dl", {});
       for(let [key, command] of __sveltets_2_ensureArray(REVIEW_KEYS)){key;
       { svelteHTML.createElement("div", {});
         { svelteHTML.createElement("dt", {}); { svelteHTML.createElement("kbd", {});nameOf(key); } }
         { svelteHTML.createElement("dd", {});words.review.keys[command]; }
       }
    }
   }
   { svelteHTML.createElement("p", {});words.review.keysInLine; }
   { svelteHTML.createElement("form", { "method":`dialog`,}); { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"type":`submit`,}});words.review.closeKeys; PlainButton} }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const KeysHelp__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type KeysHelp__SvelteComponent_ = ReturnType<typeof KeysHelp__SvelteComponent_>;
/*Ωignore_endΩ*/export default KeysHelp__SvelteComponent_;