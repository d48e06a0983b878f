///<reference types="svelte" />
;
import type { Report } from '../../core/take/schema.ts';
import { AUDIO_FILES } from '../parts/accepted-files.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { describeBacking } from './backing-words.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    /** The file that was given, or null. */
    name: string | null;
    found: Report['source']['backing'];
    /** null leaves the backing in. */
    onbacking: (file: File | null) => void;
  };function $$render() {

  
  
  
  
  

  let { name, found, onbacking }: Props = $props();
  const words = useWords();

  let chooser = $state<HTMLInputElement>();

  function choose(event: Event & { currentTarget: HTMLInputElement }) {
    const file = event.currentTarget.files?.[0];
    event.currentTarget.value = '';
    if (file !== undefined) onbacking(file);
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`backing`,});
   { svelteHTML.createElement("p", {});
    name === null ? words.review.askForBacking : describeBacking(name, found, words);
   }
   { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },"onclick":() => chooser?.click(),}});name === null ? words.review.giveBacking : words.review.giveOtherBacking;  PlainButton}
  if(name !== null){ { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onbacking(null),}});words.review.leaveBackingIn;  PlainButton}}
    { const $$_input1 = svelteHTML.createElement("input", {        "type":`file`,"accept":AUDIO_FILES,"onchange":choose,"hidden":true,});chooser = $$_input1;}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const BackingOut__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type BackingOut__SvelteComponent_ = ReturnType<typeof BackingOut__SvelteComponent_>;
/*Ωignore_endΩ*/export default BackingOut__SvelteComponent_;