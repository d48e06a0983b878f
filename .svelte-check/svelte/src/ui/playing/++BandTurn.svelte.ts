///<reference types="svelte" />
;
import type { Turn } from './moment.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    turn: Turn;
  };function $$render() {

  
  

  let { turn }: Props = $props();
  const words = useWords();

  const last = $derived(turn.barsLeft === 1);
;
async () => {


 { svelteHTML.createElement("div", {   "class":`turn`,"aria-hidden":`true`,});last;
   { svelteHTML.createElement("p", { "class":`count`,});
    if(last){ { svelteHTML.createElement("span", { "class":`word`,});words.playing.youIn; }}
     { svelteHTML.createElement("b", {});last ? turn.beatsLeft : turn.barsLeft; }
   }
   { svelteHTML.createElement("span", { "class":`rest`,}); }
   { svelteHTML.createElement("p", { "class":`word`,});last ? words.playing.getReady : words.playing.listen; }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const BandTurn__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type BandTurn__SvelteComponent_ = ReturnType<typeof BandTurn__SvelteComponent_>;
/*Ωignore_endΩ*/export default BandTurn__SvelteComponent_;