///<reference types="svelte" />
;
import { instrumentOf } from '../../core/music/instruments.ts';
import {
    HIGHEST_WINDOW,
    MOST_CAPO,
    type Frets,
    type PlayingSettings,
  } from '../../state/playing-settings.ts';
import { hasOption } from '../instrument/views.ts';
import Choice from '../parts/Choice.svelte';
import CheckBox from '../parts/CheckBox.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    settings: PlayingSettings;
    onchange: (change: Partial<PlayingSettings>) => void;
  };function $$render() {

  
  
  
  
  
  

  let { settings, onchange }: Props = $props();
  const words = useWords();

  const hasNeck = $derived((instrumentOf(settings.instrument)?.neck ?? null) !== null);
  const windows = [1, 3, 5, 7, 9, 12, 15].filter((fret) => fret <= HIGHEST_WINDOW);
  const capos = Array.from({ length: MOST_CAPO + 1 }, (_, fret) => fret);

  const readFrets = (value: string): Frets => (value === 'all' || value === 'hand' ? value : Number(value));
;
async () => {


 { svelteHTML.createElement("div", { "class":`row`,});
   { const $$_eciohC1C = __sveltets_2_ensureComponent(Choice); new $$_eciohC1C({ target: __sveltets_2_any(), props: {         "name":words.ready.display.tonesBy,"value":settings.labels,"choices":[
      ['degrees', words.ready.display.byDegree],
      ['names', words.ready.display.byName],
    ],"onchoose":(value) => onchange({ labels: value as PlayingSettings['labels'] }),}});}
  if(hasOption(settings.view, 'frets')){
     { const $$_eciohC1C = __sveltets_2_ensureComponent(Choice); new $$_eciohC1C({ target: __sveltets_2_any(), props: {         "name":words.ready.display.frets,"value":String(settings.frets),"choices":[
        ['all', words.ready.display.allFrets],
        ['hand', words.ready.display.fretsAtHand],
        ...windows.map((fret) => [String(fret), words.ready.display.fiveFrom({ fret })] as const),
      ],"onchoose":(value) => onchange({ frets: readFrets(value) }),}});}
  }
  if(hasNeck){
     { const $$_eciohC1C = __sveltets_2_ensureComponent(Choice); new $$_eciohC1C({ target: __sveltets_2_any(), props: {         "name":words.ready.display.capo,"value":String(settings.capo),"choices":capos.map((fret) => [
        String(fret),
        fret === 0 ? words.ready.display.noCapo : words.ready.display.capoAt({ fret }),
      ]),"onchoose":(value) => onchange({ capo: Number(value) }),}});}
  }
  if(hasOption(settings.view, 'clef')){
     { const $$_eciohC1C = __sveltets_2_ensureComponent(Choice); new $$_eciohC1C({ target: __sveltets_2_any(), props: {         "name":words.ready.display.clef,"value":settings.clef,"choices":[
        ['treble', words.ready.display.treble],
        ['bass', words.ready.display.bassClef],
      ],"onchoose":(value) => onchange({ clef: value as PlayingSettings['clef'] }),}});}
  }
 }
 { svelteHTML.createElement("div", { "class":`ticks`,});
  if(hasOption(settings.view, 'leftHanded')){
     { const $$_xoBkcehC1C = __sveltets_2_ensureComponent(CheckBox); new $$_xoBkcehC1C({ target: __sveltets_2_any(), props: {         "name":words.ready.display.leftHanded,"checked":settings.leftHanded,"why":words.ready.display.leftHandedWhy,"onset":(leftHanded) => onchange({ leftHanded }),}});}
  }
   { const $$_xoBkcehC1C = __sveltets_2_ensureComponent(CheckBox); new $$_xoBkcehC1C({ target: __sveltets_2_any(), props: {         "name":words.ready.display.quiet,"checked":settings.quiet,"why":words.ready.display.quietWhy,"onset":(quiet) => onchange({ quiet }),}});}
   { const $$_xoBkcehC1C = __sveltets_2_ensureComponent(CheckBox); new $$_xoBkcehC1C({ target: __sveltets_2_any(), props: {         "name":words.ready.display.speak,"checked":settings.speakLandings,"why":words.ready.display.speakWhy,"onset":(speakLandings) => onchange({ speakLandings }),}});}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const DisplaySettings__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type DisplaySettings__SvelteComponent_ = ReturnType<typeof DisplaySettings__SvelteComponent_>;
/*Ωignore_endΩ*/export default DisplaySettings__SvelteComponent_;