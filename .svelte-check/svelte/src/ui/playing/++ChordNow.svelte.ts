///<reference types="svelte" />
;
import ChordSymbol from '../parts/ChordSymbol.svelte';
import { chordWidth } from '../parts/engrave.ts';
import type { Moment } from './moment.ts';
;

  interface Props {
    moment: Moment | null;
  };function $$render() {

  
  
  

  let { moment }: Props = $props();

  const symbol = $derived(moment?.chordNow?.symbol ?? 'N.C.');
;
async () => {



 { svelteHTML.createElement("p", {  });moment?.turn?.whose === 'band';__sveltets_2_ensureType(String, Number, chordWidth(symbol));
  if(moment !== null){
    if(moment.countIn !== null){
       { svelteHTML.createElement("span", { "class":`count`,});moment.countIn; }
    }else{
       { const $$_lobmySdrohC1C = __sveltets_2_ensureComponent(ChordSymbol); new $$_lobmySdrohC1C({ target: __sveltets_2_any(), props: { symbol,}});}
    }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const ChordNow__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type ChordNow__SvelteComponent_ = ReturnType<typeof ChordNow__SvelteComponent_>;
/*Ωignore_endΩ*/export default ChordNow__SvelteComponent_;