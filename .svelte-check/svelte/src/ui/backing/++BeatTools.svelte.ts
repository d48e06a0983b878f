///<reference types="svelte" />
;
import { levels, type Level } from '../../core/beats/levels.ts';
import type { BackingDesk } from '../../state/backing-desk.svelte.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { beatWords } from './beat-sentences.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    desk: BackingDesk;
  };function $$render() {

  
  
  
  
  

  let { desk }: Props = $props();
  const words = useWords();

  const { editor } = $derived(desk);
  const chosen = $derived(editor.chosen === null ? null : (editor.track.marks[editor.chosen] ?? null));
  const bpm = $derived(desk.bpm);
  const factor: Readonly<Record<Level, number>> = {
    'a third': 1 / 3,
    half: 1 / 2,
    twice: 2,
    'three times': 3,
  };
  /** Slower or faster than this nobody counts. */
  const COUNTED = { slowest: 30, fastest: 340 };
  const others = $derived(
    bpm === null
      ? []
      : levels
          .map((level) => [level, bpm * factor[level]] as const)
          .filter(([, other]) => other >= COUNTED.slowest && other <= COUNTED.fastest),
  );
;
async () => {


 { svelteHTML.createElement("div", { "class":`beats`,});
   { svelteHTML.createElement("p", { "class":`tempo`,});
    if(bpm === null){
      words.backing.noBeats;
    }else{
       { svelteHTML.createElement("span", { }); { svelteHTML.createElement("b", {});words.numbers.decimal({ value: bpm, digits: 1 }); }
        words.backing.tempoAndBars({ bars: desk.bars }); }
       { svelteHTML.createElement("span", { "class":`others`,});
        words.backing.otherTempos;
           for(let [level, other] of __sveltets_2_ensureArray(others)){level;
           { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"aria-label":words.backing.countOther({ level, bpm: Math.round(other) }),"onclick":() => desk.edit((beats) => beats.count(level)),}});Math.round(other);  PlainButton}
        }
       }
    }
   }
  if(bpm !== null || editor.canUndo){
     { svelteHTML.createElement("div", {     "class":`chosen`,"role":`group`,"aria-label":words.backing.chosenBeat,});
       { svelteHTML.createElement("p", {});
        editor.chosen === null
          ? words.backing.chooseBeat
          : beatWords(editor.track, editor.chosen, desk.beatsPerBar, words);
       }
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === null,"onclick":() => desk.edit((beats) => beats.setDownbeat()),}});words.backing.barOne;  PlainButton}
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === null,"onclick":() => chosen && desk.play(chosen.seconds),}});words.backing.playFrom;  PlainButton}
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === null,"onclick":() => desk.edit((beats) => beats.nudge(-0.01)),}});words.backing.earlier;  PlainButton}
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === null,"onclick":() => desk.edit((beats) => beats.nudge(0.01)),}});words.backing.later;  PlainButton}
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === null,"onclick":() => desk.edit((beats) => beats.togglePin()),}});chosen?.pinned ? words.backing.release : words.backing.hold;  PlainButton}
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === null,"onclick":() => desk.edit((beats) => beats.insertBehind()),}});words.backing.addBehind;  PlainButton}
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === null,"onclick":() => desk.edit((beats) => beats.remove()),}});words.backing.takeOut;  PlainButton}
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === null,"onclick":() => desk.edit((beats) => beats.evenOut()),}});words.backing.evenOut;  PlainButton}
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":chosen === null,"onclick":() => desk.edit((beats) => beats.goOn()),}});words.backing.continueTempo;  PlainButton}
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":!editor.canUndo,"onclick":() => desk.edit((beats) => beats.undo()),}});words.backing.undo;  PlainButton}
     }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const BeatTools__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type BeatTools__SvelteComponent_ = ReturnType<typeof BeatTools__SvelteComponent_>;
/*Ωignore_endΩ*/export default BeatTools__SvelteComponent_;