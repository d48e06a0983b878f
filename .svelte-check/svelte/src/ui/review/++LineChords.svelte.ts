///<reference types="svelte" />
;
import type { ChordSpan } from '../../core/chart/timeline.ts';
import ChordSymbol from '../parts/ChordSymbol.svelte';
import { barsBetween, beatOf, widthOf, xOf, type Strip } from './line-geometry.ts';
;

  interface Props {
    strip: Strip;
    spans: readonly ChordSpan[];
    beatsPerBar: number;
    /** What is gone round, in beats, or null. */
    looped: readonly [from: number, to: number] | null;
    /** Bars were marked: from and to in beats. */
    onmark: (fromBeat: number, toBeat: number) => void;
  };function $$render() {

  
  
  

  let { strip, spans, beatsPerBar, looped, onmark }: Props = $props();

  /** Where the drag began and where it is, in beats. */
  let marking = $state.raw<{ readonly from: number; readonly to: number } | null>(null);
  const washed = $derived(marking === null ? looped : barsBetween(marking.from, marking.to, beatsPerBar));

  const beatUnder = (event: PointerEvent & { currentTarget: HTMLElement }) =>
    beatOf(strip, event.clientX - event.currentTarget.getBoundingClientRect().left);

  function begin(event: PointerEvent & { currentTarget: HTMLElement }) {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    marking = { from: beatUnder(event), to: beatUnder(event) };
  }

  function move(event: PointerEvent & { currentTarget: HTMLElement }) {
    if (marking !== null) marking = { ...marking, to: beatUnder(event) };
  }

  function end() {
    if (marking !== null) onmark(...barsBetween(marking.from, marking.to, beatsPerBar));
    marking = null;
  }
;
async () => {


if(washed !== null){
   { svelteHTML.createElement("span", {     "class":`looped`,});__sveltets_2_ensureType(String, Number, `${xOf(strip, washed[0])} `);__sveltets_2_ensureType(String, Number, `${Math.min(widthOf(strip), xOf(strip, washed[1])) - xOf(strip, washed[0])} `); }
}


  { svelteHTML.createElement("div", {          "class":`names`,"onpointerdown":begin,"onpointermove":move,"onpointerup":end,"onpointercancel":() => (marking = null),});
     for(let span of __sveltets_2_ensureArray(spans)){span.startBeat;
     { svelteHTML.createElement("span", {  });__sveltets_2_ensureType(String, Number, `${xOf(strip, span.startBeat)} `); { const $$_lobmySdrohC2C = __sveltets_2_ensureComponent(ChordSymbol); new $$_lobmySdrohC2C({ target: __sveltets_2_any(), props: {  "symbol":span.chord?.symbol ?? 'N.C.',}});} }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const LineChords__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type LineChords__SvelteComponent_ = ReturnType<typeof LineChords__SvelteComponent_>;
/*Ωignore_endΩ*/export default LineChords__SvelteComponent_;