///<reference types="svelte" />
;
import type { Snippet } from 'svelte';
import { useHelp, type HelpEntry } from './use-help.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    entry: HelpEntry;
    children: Snippet;
  };function $$render() {

  
  
  

  let { entry, children }: Props = $props();
  const words = useWords();
  const open = useHelp();
;
async () => {


 { svelteHTML.createElement("button", {     "type":`button`,"title":words.help.whatIsThis,"onclick":() => open(entry),});;__sveltets_2_ensureSnippet(children()); }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const HelpLink__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type HelpLink__SvelteComponent_ = ReturnType<typeof HelpLink__SvelteComponent_>;
/*Ωignore_endΩ*/export default HelpLink__SvelteComponent_;