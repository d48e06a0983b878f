///<reference types="svelte" />
;
import type { Pages } from '../../state/pages.svelte.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    pages: Pages;
  };function $$render() {

  
  
  

  let { pages }: Props = $props();
  const words = useWords();
;
async () => {


 { svelteHTML.createElement("div", { "class":`links`,});
   { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => pages.showProgress(true),}});words.progress.open; PlainButton}
   { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => pages.openHelp(),}});words.help.open; PlainButton}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const PageLinks__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type PageLinks__SvelteComponent_ = ReturnType<typeof PageLinks__SvelteComponent_>;
/*Ωignore_endΩ*/export default PageLinks__SvelteComponent_;