///<reference types="svelte" />
;
import type { BackingDesk } from '../../state/backing-desk.svelte.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { tapWords } from './beat-sentences.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    desk: BackingDesk;
    wide: number;
    onwide: (seconds: number) => void;
  };function $$render() {

  
  
  
  

  let { desk, wide, onwide }: Props = $props();
  const words = useWords();

  const sights = [2, 4, 8, 16, 32] as const;
;
async () => {


 { svelteHTML.createElement("div", { "class":`line`,});
  if(desk.playing){
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => desk.pause(),}});words.backing.pause; PlainButton}
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => desk.tap(),}});words.backing.tap; PlainButton}
  }else{
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: {   children:() => { return __sveltets_2_any(0); },"disabled":desk.sound === null,"onclick":() => desk.play(),}});words.backing.play; PlainButton}
  }
  if(desk.taps.length > 0){
     { svelteHTML.createElement("span", { "role":`status`,});tapWords(desk.taps.length, desk.tappedBpm, words); }
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => desk.useTaps(),}});words.backing.useTaps; PlainButton}
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => desk.forgetTaps(),}});words.backing.forgetTaps; PlainButton}
  }
   { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":desk.sound === null || desk.busy !== null,"onclick":() => void desk.findBeats(),}});words.backing.findAgain;  PlainButton}
   { svelteHTML.createElement("label", {});
     { svelteHTML.createElement("span", {});words.backing.wide; }
     { svelteHTML.createElement("select", {   "value":wide,"onchange":(event) => onwide(Number(event.currentTarget.value)),});
         for(let seconds of __sveltets_2_ensureArray(sights)){seconds; { svelteHTML.createElement("option", { "value":seconds,});words.backing.seconds({ seconds }); }}
     }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Transport__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Transport__SvelteComponent_ = ReturnType<typeof Transport__SvelteComponent_>;
/*Ωignore_endΩ*/export default Transport__SvelteComponent_;