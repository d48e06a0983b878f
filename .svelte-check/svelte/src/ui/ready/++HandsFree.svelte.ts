///<reference types="svelte" />
;
import type { MidiConnection } from '../../state/midi-connection.svelte.ts';
import { pedals, type PlayingSettings } from '../../state/playing-settings.ts';
import Choice from '../parts/Choice.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import CheckBox from '../parts/CheckBox.svelte';
import { describeFoot } from './describe-foot.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    settings: PlayingSettings;
    midi: MidiConnection;
    onchange: (change: Partial<PlayingSettings>) => void;
  };function $$render() {

  
  
  
  
  
  
  

  let { settings, midi, onchange }: Props = $props();
  const words = useWords();

  function setMidiPedal(midiPedal: boolean) {
    onchange({ midiPedal });
    if (midiPedal) void midi.connect();
  }
;
async () => {


 { const $$_eciohC0C = __sveltets_2_ensureComponent(Choice); new $$_eciohC0C({ target: __sveltets_2_any(), props: {         "name":words.ready.handsFree.pedal,"value":settings.pedal,"choices":pedals.map((pedal) => [pedal, words.ready.handsFree.pedals[pedal]]),"onchoose":(value) => onchange({ pedal: value as PlayingSettings['pedal'] }),}});}
 { svelteHTML.createElement("div", { "class":`ticks`,});
   { const $$_xoBkcehC1C = __sveltets_2_ensureComponent(CheckBox); new $$_xoBkcehC1C({ target: __sveltets_2_any(), props: {         "name":words.ready.handsFree.repeat,"checked":settings.repeat,"why":words.ready.handsFree.repeatWhy,"onset":(repeat) => onchange({ repeat }),}});}
   { const $$_xoBkcehC1C = __sveltets_2_ensureComponent(CheckBox); new $$_xoBkcehC1C({ target: __sveltets_2_any(), props: {         "name":words.ready.handsFree.midiPedal,"checked":settings.midiPedal,"why":words.ready.handsFree.midiPedalWhy,"onset":setMidiPedal,}});}
   { const $$_xoBkcehC1C = __sveltets_2_ensureComponent(CheckBox); new $$_xoBkcehC1C({ target: __sveltets_2_any(), props: {         "name":words.ready.handsFree.playedSignal,"checked":settings.playedSignal,"why":words.ready.handsFree.playedSignalWhy,"onset":(playedSignal) => onchange({ playedSignal }),}});}
 }
if(settings.midiPedal){
   { svelteHTML.createElement("p", {   "class":`foot`,"role":`status`,});
    if(midi.learning === 'a press'){
      words.ready.handsFree.pressSwitch;
    } else if (midi.learning === 'its release'){
      words.ready.handsFree.letGo;
    } else if (settings.foot !== null){
      words.ready.handsFree.switchIs({ foot: describeFoot(settings.foot, words) });
    }else{
      words.ready.handsFree.anyPedal;
    }
    if(midi.learning !== null){
       { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => midi.forgetLearning(),}});words.ready.handsFree.neverMind; PlainButton}
    }else{
       { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },"onclick":() => midi.learnFoot((foot) => onchange({ foot })),}});words.ready.handsFree.learn;  PlainButton}
      if(settings.foot !== null){
         { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onchange({ foot: null }),}});words.ready.handsFree.forget; PlainButton}
      }
    }
   }
}
 { svelteHTML.createElement("p", {});
  words.ready.handsFree.keysBefore;  { svelteHTML.createElement("kbd", {});  }  { svelteHTML.createElement("kbd", {});  }  { svelteHTML.createElement("kbd", {});  }  { svelteHTML.createElement("kbd", {});  }
  words.ready.handsFree.keysBetween;  { svelteHTML.createElement("kbd", {});  }
  words.ready.handsFree.keysAnd;  { svelteHTML.createElement("kbd", {});  }
  words.ready.handsFree.keysAfter;
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const HandsFree__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type HandsFree__SvelteComponent_ = ReturnType<typeof HandsFree__SvelteComponent_>;
/*Ωignore_endΩ*/export default HandsFree__SvelteComponent_;