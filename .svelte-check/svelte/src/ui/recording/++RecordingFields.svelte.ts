///<reference types="svelte" />
;
import { MAJOR_TONICS, MINOR_TONICS } from '../../core/music/keys.ts';
import { describeProblem } from '../../core/words/problem.ts';
import type { Songbook } from '../../state/songbook.svelte.ts';
import type { Setup } from '../../state/setup.svelte.ts';
import ChartField from '../chart/ChartField.svelte';
import { signsInText } from '../parts/engrave.ts';
import { keyWords } from '../parts/sentences.ts';
import type { FormChoice } from '../ready/form-choice.ts';
import Markings from '../ready/Markings.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    /** Of the recording alone. */
    setup: Setup;
    forms: readonly FormChoice[];
    songbook: Songbook;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  

  let { setup, forms, songbook }: Props = $props();
  const words = useWords();

  const KEPT = 'kept ';
  /** The keys that bands play in; the rest only spell these twice. */
  const COMMON = 12;

  const settings = $derived(setup.settings);
  const groups = $derived([...new Set(forms.map(({ group }) => group))]);
  const kept = $derived(songbook.called(setup.ownTitle));
  const chosen = $derived(settings.form ?? (kept === null ? '' : KEPT + kept.id));
  const keys = $derived(
    settings.key.includes('minor')
      ? MINOR_TONICS.slice(0, COMMON).map((tonic) => `${tonic} minor`)
      : MAJOR_TONICS.slice(0, COMMON),
  );

  function choose(value: string) {
    const chart = songbook.charts.find(({ id }) => KEPT + id === value);
    if (chart) setup.writeChart(chart.chartText, chart.title);
    else if (value === '') setup.writeChart(setup.settings.ownChart || setup.chartText);
    else setup.chooseForm(value);
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`fields`,});
   { svelteHTML.createElement("label", {});
     { svelteHTML.createElement("span", {});words.recording.chart; }
     { svelteHTML.createElement("select", {   "value":chosen,"onchange":(event) => choose(event.currentTarget.value),});
         for(let group of __sveltets_2_ensureArray(groups)){group;
         { svelteHTML.createElement("optgroup", { "label":group,});
             for(let { name, title } of __sveltets_2_ensureArray(forms.filter((one) => one.group === group))){name;
             { svelteHTML.createElement("option", { "value":name,});title; }
          }
         }
      }
      if(songbook.charts.length > 0){
         { svelteHTML.createElement("optgroup", { "label":words.ready.ownCharts,});
             for(let { id, title } of __sveltets_2_ensureArray(songbook.charts)){id; { svelteHTML.createElement("option", { "value":KEPT + id,});signsInText(title); }}
         }
      }
       { svelteHTML.createElement("option", {"value":"",});words.ready.writeChart; }
     }
   }
  if(settings.form === null){
     { const $$_dleiFtrahC1C = __sveltets_2_ensureComponent(ChartField); new $$_dleiFtrahC1C({ target: __sveltets_2_any(), props: {       "text":settings.ownChart,"problem":setup.timeline.ok ? null : describeProblem(setup.timeline.problem, words),"onwrite":(text) => setup.writeChart(text),}});}
  }
   { const $$_sgnikraM1C = __sveltets_2_ensureComponent(Markings); new $$_sgnikraM1C({ target: __sveltets_2_any(), props: {                "feel":settings.feel,"bpm":settings.bpm,"musicKey":settings.key,keys,"keyName":(key) => keyWords(key, words),"onfeel":(feel) => setup.chooseFeel(feel),"onbpm":(bpm) => setup.setBpm(bpm),"onkey":(key) => setup.chooseKey(key),}});}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const RecordingFields__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type RecordingFields__SvelteComponent_ = ReturnType<typeof RecordingFields__SvelteComponent_>;
/*Ωignore_endΩ*/export default RecordingFields__SvelteComponent_;