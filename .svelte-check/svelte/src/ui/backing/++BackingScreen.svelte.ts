///<reference types="svelte" />
;
import { chordPlaces } from '../../state/backing-fields.ts';
import type { BackingDesk } from '../../state/backing-desk.svelte.ts';
import type { BackingRecord } from '../../state/chosen-backing.ts';
import Logo from '../parts/Logo.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import BeatTools from './BeatTools.svelte';
import BackingFacts from './BackingFacts.svelte';
import Transport from './Transport.svelte';
import Waveform from './Waveform.svelte';
import { describe } from '../../core/words/problem.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    desk: BackingDesk;
    record: BackingRecord;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  

  let { desk, record }: Props = $props();
  const words = useWords();

  let wide = $state(8);
  /** What was set here and is not kept would be lost. */
  let asking = $state(false);

  function back() {
    if (desk.changed) asking = true;
    else desk.close();
  }
  const chart = $derived(desk.chart);
  const chords = $derived(chart.ok ? chordPlaces(chart.value, desk.editor.track) : []);

  const inField = (target: EventTarget | null) =>
    target instanceof Element && target.closest('input[type=text], textarea, select') !== null;
  const onButton = (target: EventTarget | null) =>
    target instanceof Element && target.closest('button, summary, a') !== null;

  /** The space bar taps while the recording plays, and plays while it rests; a button keeps it while it rests. */
  function keydown(event: KeyboardEvent) {
    if (event.ctrlKey || event.metaKey || event.altKey || inField(event.target)) return;
    if (event.key === 'Escape') return desk.playing ? desk.pause() : undefined;
    if (event.key !== ' ' || (onButton(event.target) && !desk.playing)) return;
    event.preventDefault();
    if (event.repeat) return;
    if (desk.playing) desk.tap();
    else desk.play();
  }

  /** Some browsers press a button when the space bar rises. */
  function keyup(event: KeyboardEvent) {
    if (event.key === ' ' && desk.playing && onButton(event.target)) event.preventDefault();
  }
;
async () => {


 { svelteHTML.createElement("svelte:window", {       "onkeydown":keydown,"onkeyup":keyup,"onbeforeunload":(event) => desk.changed && event.preventDefault(),});}

 { svelteHTML.createElement("div", { "class":`page`,});
   { svelteHTML.createElement("header", {});
     { const $$_ogoL2C = __sveltets_2_ensureComponent(Logo); new $$_ogoL2C({ target: __sveltets_2_any(), props: {}});}
    if(asking){
       { svelteHTML.createElement("span", { "class":`asking`,});
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => desk.close(),}});words.backing.throwAway; PlainButton}
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => (asking = false),}});words.backing.goOn; PlainButton}
       }
    }else{
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":back,}});words.backing.back; PlainButton}
    }
   }
   { svelteHTML.createElement("main", { "tabindex":-1,});
     { svelteHTML.createElement("div", { "class":`head`,});
       { svelteHTML.createElement("h1", {});words.backing.title; }
       { svelteHTML.createElement("div", { "class":`keep`,});
         { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"strong":true,"disabled":!desk.canKeep,"onclick":() => void desk.keep(),}});words.backing.keep;  PlainButton}
         { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":!desk.canKeep,"onclick":() => desk.saveBeats(),}});words.backing.saveBeats;  PlainButton}
       }
     }
     { svelteHTML.createElement("p", {   "class":`told`,"role":`status`,});
      if(desk.busy !== null){
        words.backing.busy[desk.busy];
      } else if (desk.problem !== null){
        describe(desk.problem, words);
      }else{
        words.backing.help;
      }
     }
    if(desk.sound !== null){
       { svelteHTML.createElement("section", { "aria-label":words.backing.beats,});
         { const $$_mrofevaW3C = __sveltets_2_ensureComponent(Waveform); new $$_mrofevaW3C({ target: __sveltets_2_any(), props: {     desk,"sound":desk.sound,chords,wide,}});}
         { const $$_tropsnarT3C = __sveltets_2_ensureComponent(Transport); new $$_tropsnarT3C({ target: __sveltets_2_any(), props: {    desk,wide,"onwide":(seconds) => (wide = seconds),}});}
         { const $$_slooTtaeB3C = __sveltets_2_ensureComponent(BeatTools); new $$_slooTtaeB3C({ target: __sveltets_2_any(), props: { desk,}});}
       }
       { svelteHTML.createElement("section", { "aria-label":words.backing.facts,});
         { const $$_stcaFgnikcaB3C = __sveltets_2_ensureComponent(BackingFacts); new $$_stcaFgnikcaB3C({ target: __sveltets_2_any(), props: {  desk,record,}});}
       }
    }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const BackingScreen__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type BackingScreen__SvelteComponent_ = ReturnType<typeof BackingScreen__SvelteComponent_>;
/*Ωignore_endΩ*/export default BackingScreen__SvelteComponent_;