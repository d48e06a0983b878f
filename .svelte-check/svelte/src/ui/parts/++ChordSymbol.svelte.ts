///<reference types="svelte" />
;
import { spelledChord } from '../../core/words/spelling.ts';
import { engraveChord, spokenChord } from './engrave.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    symbol: string;
  };function $$render() {

  
  
  

  let { symbol }: Props = $props();
  const words = useWords();

  const set = $derived(engraveChord(spelledChord(symbol, words)));
;
async () => {


 { svelteHTML.createElement("span", { "class":`chord`,});
   { svelteHTML.createElement("span", { "class":`only-heard`,});spokenChord(symbol, words); }
   { svelteHTML.createElement("span", {    "class":`set`,"aria-hidden":`true`,});set.letter;if(set.accidental){ { svelteHTML.createElement("span", { "class":`accidental`,});set.accidental; }}if(set.stem){ { svelteHTML.createElement("span", {   "class":`stem`,});set.stem === '−';set.stem; }}if(set.raised){ { svelteHTML.createElement("span", { "class":`raised`,});set.raised; }}if(set.bass){ { svelteHTML.createElement("span", {  "class":`bass`,}); { svelteHTML.createElement("span", { "class":`slash`,});  }set.bass; }} }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const ChordSymbol__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type ChordSymbol__SvelteComponent_ = ReturnType<typeof ChordSymbol__SvelteComponent_>;
/*Ωignore_endΩ*/export default ChordSymbol__SvelteComponent_;