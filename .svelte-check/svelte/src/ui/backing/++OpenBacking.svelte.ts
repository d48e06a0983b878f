///<reference types="svelte" />
;
import { AUDIO_FILES } from '../parts/accepted-files.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    disabled: boolean;
    onfile: (file: File) => void;
  };function $$render() {

  
  
  

  let { disabled, onfile }: Props = $props();
  const words = useWords();

  /** The browser's own dialogue; its field is needed for that moment alone. */
  function ask() {
    const chooser = document.createElement('input');
    chooser.type = 'file';
    chooser.accept = AUDIO_FILES;
    chooser.onchange = () => {
      const file = chooser.files?.[0];
      if (file) onfile(file);
    };
    chooser.click();
  }
;
async () => {


 { const $$_nottuBnialP0C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP0C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },disabled,"onclick":ask,}});words.backing.open; PlainButton}
};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const OpenBacking__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type OpenBacking__SvelteComponent_ = ReturnType<typeof OpenBacking__SvelteComponent_>;
/*Ωignore_endΩ*/export default OpenBacking__SvelteComponent_;