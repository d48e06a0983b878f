///<reference types="svelte" />
;
import { timelineAsRead } from '../../core/chart/as-read.ts';
import { instrumentOf } from '../../core/music/instruments.ts';
import { MAJOR_TONICS, MINOR_TONICS, parseKey, writeKey } from '../../core/music/keys.ts';
import { keyAsRead, pitchedIn, readingOf } from '../../core/music/reading.ts';
import { describeProblem } from '../../core/words/problem.ts';
import { keyWords, noteWords } from '../parts/sentences.ts';
import type { Snippet } from 'svelte';
import type { Timeline } from '../../core/chart/timeline.ts';
import type { BackingRecord } from '../../state/chosen-backing.ts';
import type { Songbook } from '../../state/songbook.svelte.ts';
import type { Setup } from '../../state/setup.svelte.ts';
import { signsInText } from '../parts/engrave.ts';
import FormSheet from '../parts/FormSheet.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import { sheetBars, tacetBars } from '../parts/sheet.ts';
import ChartField from '../chart/ChartField.svelte';
import type { FormChoice } from './form-choice.ts';
import KeptCharts from './KeptCharts.svelte';
import Markings from './Markings.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    setup: Setup;
    forms: readonly FormChoice[];
    songbook: Songbook;
    onform: (name: string | null) => void;
    /** The player's own backings, to be chosen where there is no set list. */
    backings: readonly BackingRecord[];
    onbacking: (id: string) => void;
    /** A backing on the stand, in place of title and markings. */
    stand: Snippet;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  

  let { setup, forms, songbook, onform, backings, onbacking, stand }: Props = $props();
  const words = useWords();

  const BACKING = 'backing ';

  function choose(value: string) {
    if (value.startsWith(BACKING)) onbacking(value.slice(BACKING.length));
    else onform(value === '' ? null : value);
  }

  /** The keys that bands play in; the rest only spell these twice. */
  const COMMON = 12;

  const groups = $derived([...new Set(forms.map(({ group }) => group))]);
  const settings = $derived(setup.settings);
  const form = $derived(forms.find(({ name }) => name === settings.form) ?? null);
  const keys = $derived(
    settings.key.includes('minor')
      ? MINOR_TONICS.slice(0, COMMON).map((tonic) => `${tonic} minor`)
      : MAJOR_TONICS.slice(0, COMMON),
  );
  const timeline = $derived(setup.timeline);
  const played = $derived(instrumentOf(settings.instrument));
  const reading = $derived(readingOf(played, settings.pitch));
  const writtenFor = $derived(played === null || reading.semitones === 0 ? null : pitchedIn(played));
  const readKey = (key: string) => {
    const parsed = parseKey(key);
    return keyWords(parsed === null ? key : writeKey(keyAsRead(parsed, reading)), words);
  };
  /** While a chart is being written, the last one that could be read stays in sight. */
  let lastGood: Timeline | null = null;
  const drawn = $derived.by(() => {
    if (timeline.ok) lastGood = timeline.value;
    return lastGood;
  });
;
async () => {


 { svelteHTML.createElement("section", {   "class":`sheet`,"aria-label":words.ready.sheet,});
  if(setup.backing === null){ { svelteHTML.createElement("h2", { "class":`title`,});
      form?.title ?? signsInText(setup.ownTitle ?? words.ready.ownChart);
     }}
   { svelteHTML.createElement("label", { "class":`choice`,});
     { svelteHTML.createElement("span", { "class":`only-heard`,});words.ready.form; }
     { svelteHTML.createElement("select", {     "value":setup.backing === null ? (settings.form ?? '') : BACKING + setup.backing.record.id,"onchange":(event) => choose(event.currentTarget.value),});
         for(let group of __sveltets_2_ensureArray(groups)){group;
         { svelteHTML.createElement("optgroup", { "label":group,});
             for(let { name, title } of __sveltets_2_ensureArray(forms.filter((one) => one.group === group))){name;
             { svelteHTML.createElement("option", { "value":name,});title; }
          }
         }
      }
         for(let { id, title } of __sveltets_2_ensureArray(backings)){id;
         { svelteHTML.createElement("option", { "value":BACKING + id,});title; }
      }
       { svelteHTML.createElement("option", {"value":"",});words.ready.writeChart; }
     }
   }
  if(setup.backing !== null){
    ;__sveltets_2_ensureSnippet(stand());
  }else{
     { svelteHTML.createElement("p", { "class":`trains`,});form?.trains ?? words.ready.ownChanges; }
     { const $$_sgnikraM1C = __sveltets_2_ensureComponent(Markings); new $$_sgnikraM1C({ target: __sveltets_2_any(), props: {                    "feel":settings.feel,"bpm":settings.bpm,"musicKey":settings.key,keys,"keyName":readKey,"choruses":settings.choruses,"onfeel":(feel) => setup.chooseFeel(feel),"onbpm":(bpm) => setup.setBpm(bpm),"onkey":(key) => setup.chooseKey(key),"onchoruses":(choruses) => setup.setChoruses(choruses),}});}
    if(setup.canUndo){
       { svelteHTML.createElement("p", {}); { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => setup.undo(),}});words.ready.undo; PlainButton} }
    }
    if(settings.form === null){
      if(writtenFor !== null){
         { svelteHTML.createElement("p", { "class":`pitch`,});words.ready.concertPitchChart({ pitch: noteWords(writtenFor, words) }); }
      }
       { const $$_dleiFtrahC1C = __sveltets_2_ensureComponent(ChartField); new $$_dleiFtrahC1C({ target: __sveltets_2_any(), props: {       "text":settings.ownChart,"problem":timeline.ok ? null : describeProblem(timeline.problem, words),"onwrite":(text) => setup.writeChart(text),}});}
       { const $$_strahCtpeK1C = __sveltets_2_ensureComponent(KeptCharts); new $$_strahCtpeK1C({ target: __sveltets_2_any(), props: {  setup,songbook,}});}
    }
  }
  if(drawn !== null){
     { svelteHTML.createElement("div", {  "class":`bars`,});!timeline.ok;
       { const $$_teehSmroF2C = __sveltets_2_ensureComponent(FormSheet); new $$_teehSmroF2C({ target: __sveltets_2_any(), props: {        "bars":sheetBars(timelineAsRead(drawn, reading)),"tacet":tacetBars(drawn, 0),"slashes":true,"label":words.ready.bars,}});}
     }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Sheet__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Sheet__SvelteComponent_ = ReturnType<typeof Sheet__SvelteComponent_>;
/*Ωignore_endΩ*/export default Sheet__SvelteComponent_;