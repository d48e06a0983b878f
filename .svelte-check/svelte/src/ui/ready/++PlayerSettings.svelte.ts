///<reference types="svelte" />
;
import { aimWords } from '../../core/report/aim-sentences.ts';
import { AIM_CHOICES, aimChoiceOf } from '../../core/grade/aims/targets.ts';
import { INSTRUMENTS, instrumentOf } from '../../core/music/instruments.ts';
import { pitchedIn } from '../../core/music/reading.ts';
import type { PlayingSettings } from '../../state/playing-settings.ts';
import type { MidiConnection } from '../../state/midi-connection.svelte.ts';
import { viewsFor } from '../instrument/views.ts';
import Choice from '../parts/Choice.svelte';
import { signsInText } from '../parts/engrave.ts';
import { noteWords } from '../parts/sentences.ts';
import HandsFree from './HandsFree.svelte';
import { instrumentDefaults } from './instrument-defaults.ts';
import DisplaySettings from './DisplaySettings.svelte';
import { describeProblem } from '../../core/words/problem.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    settings: PlayingSettings;
    midi: MidiConnection;
    onchange: (change: Partial<PlayingSettings>) => void;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  
  
  
  
  

  let { settings, midi, onchange }: Props = $props();
  const words = useWords();

  const instrument = $derived(instrumentOf(settings.instrument));
  const writtenFor = $derived(instrument === null ? null : pitchedIn(instrument));
  const instrumentNames: Readonly<Record<string, string>> = $derived(words.ready.instruments);
  const aim = $derived(aimChoiceOf(settings.aim));
  const views = $derived([
    ...viewsFor(instrument).map((id) => [id, words.ready.views[id]] as const),
    ['none', words.ready.player.noView] as const,
  ]);

  function chooseInput(value: string) {
    onchange({ input: value === 'midi' ? 'midi' : 'microphone' });
    // The browser asks here, where the player has just said what for.
    if (value === 'midi') void midi.connect();
  }
;
async () => {


 { svelteHTML.createElement("section", {   "class":`player`,"aria-label":words.ready.player.name,});
   { svelteHTML.createElement("div", { "class":`row`,});
     { const $$_eciohC2C = __sveltets_2_ensureComponent(Choice); new $$_eciohC2C({ target: __sveltets_2_any(), props: {         "name":words.ready.player.landOn,"value":aim.id,"choices":AIM_CHOICES.map((choice) => [choice.id, signsInText(aimWords(choice, words).name)]),"onchoose":(id) => onchange({ aim: id }),}});}
     { const $$_eciohC2C = __sveltets_2_ensureComponent(Choice); new $$_eciohC2C({ target: __sveltets_2_any(), props: {         "name":words.ready.player.instrument,"value":settings.instrument,"choices":INSTRUMENTS.map(({ id }) => [id, instrumentNames[id] ?? id]),"onchoose":(id) => onchange(instrumentDefaults(id)),}});}
    if(writtenFor !== null){
       { const $$_eciohC2C = __sveltets_2_ensureComponent(Choice); new $$_eciohC2C({ target: __sveltets_2_any(), props: {         "name":words.ready.player.pitch,"value":settings.pitch,"choices":[
          ['written', words.ready.player.written({ pitch: noteWords(writtenFor, words) })],
          ['concert', words.ready.player.concert],
        ],"onchoose":(value) => onchange({ pitch: value as PlayingSettings['pitch'] }),}});}
    }
     { const $$_eciohC2C = __sveltets_2_ensureComponent(Choice); new $$_eciohC2C({ target: __sveltets_2_any(), props: {         "name":words.ready.player.input,"value":settings.input,"choices":[
        ['microphone', words.ready.player.microphone],
        ['midi', words.ready.player.midi],
      ],"onchoose":chooseInput,}});}
     { const $$_eciohC2C = __sveltets_2_ensureComponent(Choice); new $$_eciohC2C({ target: __sveltets_2_any(), props: {         "name":words.ready.player.view,"value":settings.view,"choices":views,"onchoose":(value) => onchange({ view: value }),}});}
   }
   { svelteHTML.createElement("p", { "class":`task`,});signsInText(aimWords(aim, words).task); }
  if(settings.input === 'midi' || settings.midiPedal){
     { svelteHTML.createElement("p", {   "class":`task`,"role":`status`,});
      midi.problem !== null
        ? describeProblem(midi.problem, words)
        : midi.names.length > 0
          ? words.ready.player.midiFrom({ names: midi.names })
          : words.ready.player.midiNone;
     }
  }
   { svelteHTML.createElement("details", {});
     { svelteHTML.createElement("summary", {});words.ready.player.more; }
     { const $$_sgnitteSyalpsiD2C = __sveltets_2_ensureComponent(DisplaySettings); new $$_sgnitteSyalpsiD2C({ target: __sveltets_2_any(), props: {  settings,onchange,}});}
     { const $$_eerFsdnaH2C = __sveltets_2_ensureComponent(HandsFree); new $$_eerFsdnaH2C({ target: __sveltets_2_any(), props: {   settings,midi,onchange,}});}
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const PlayerSettings__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type PlayerSettings__SvelteComponent_ = ReturnType<typeof PlayerSettings__SvelteComponent_>;
/*Ωignore_endΩ*/export default PlayerSettings__SvelteComponent_;