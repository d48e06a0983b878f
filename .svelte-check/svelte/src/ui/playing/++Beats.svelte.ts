///<reference types="svelte" />
;
import { useWords } from '../words/use-words.ts';
;
  interface Props {
    beatsPerBar: number;
    /** From 0; −1 before anything sounds. */
    beat: number;
  };function $$render() {

  

  let { beatsPerBar, beat }: Props = $props();
  const words = useWords();
;
async () => {


 { svelteHTML.createElement("span", {     "class":`beats`,"role":`img`,"aria-label":words.playing.beatsInBar({ beats: beatsPerBar }),});
     for(let $$each_item of __sveltets_2_ensureArray({ length: beatsPerBar })){$$each_item;let i = 1;i;
     { svelteHTML.createElement("span", {   "class":`stroke`,});i === 0;i === beat; }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Beats__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Beats__SvelteComponent_ = ReturnType<typeof Beats__SvelteComponent_>;
/*Ωignore_endΩ*/export default Beats__SvelteComponent_;