///<reference types="svelte" />
;
import { describeProblem } from '../../core/words/problem.ts';
import { METERS } from '../../core/chart/chart.ts';
import type { BackingDesk } from '../../state/backing-desk.svelte.ts';
import type { BackingRecord } from '../../state/chosen-backing.ts';
import Choice from '../parts/Choice.svelte';
import ChartField from '../chart/ChartField.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    desk: BackingDesk;
    record: BackingRecord;
  };function $$render() {

  
  
  
  
  
  
  

  let { desk, record }: Props = $props();
  const words = useWords();

  /** How long the first of two eighths is, as a share of the beat. */
  const swings = [
    ['0.5', 'straight'],
    ['0.58', 'little'],
    ['0.62', 'swung'],
    ['0.667', 'shuffled'],
  ] as const;
  const meters = METERS.map(({ written }) => [written, written] as const);
  /** From old recordings to new orchestras, in Hz. */
  const pitches = [415, 432, 435, 438, 440, 441, 442, 443, 446];
  const chart = $derived(desk.chart);
  const meter = $derived(chart.ok ? chart.value.meter.written : '4/4');
;
async () => {


 { svelteHTML.createElement("div", { "class":`facts`,});
   { svelteHTML.createElement("label", {});
     { svelteHTML.createElement("span", {});words.backing.name; }
     { svelteHTML.createElement("input", {           "type":`text`,"autocomplete":`off`,"maxlength":80,"value":record.title,"oninput":(event) => desk.write({ title: event.currentTarget.value }),});}
   }
   { const $$_eciohC1C = __sveltets_2_ensureComponent(Choice); new $$_eciohC1C({ target: __sveltets_2_any(), props: {         "name":words.backing.meter,"value":meter,"choices":meters,"onchoose":(written) => desk.setMeter(written),}});}
   { const $$_eciohC1C = __sveltets_2_ensureComponent(Choice); new $$_eciohC1C({ target: __sveltets_2_any(), props: {         "name":words.backing.eighths,"value":String(record.swing),"choices":swings.map(([share, name]) => [share, words.backing.swings[name]]),"onchoose":(swing) => desk.write({ swing: Number(swing) }),}});}
   { const $$_eciohC1C = __sveltets_2_ensureComponent(Choice); new $$_eciohC1C({ target: __sveltets_2_any(), props: {         "name":words.backing.tunedTo,"value":String(record.referenceHz),"choices":pitches.map((hz) => [String(hz), words.backing.reference({ hz })]),"onchoose":(hz) => desk.write({ referenceHz: Number(hz) }),}});}
 }
 { const $$_dleiFtrahC0C = __sveltets_2_ensureComponent(ChartField); new $$_dleiFtrahC0C({ target: __sveltets_2_any(), props: {       "text":record.chartText,"problem":chart.ok ? null : describeProblem(chart.problem, words),"onwrite":(chartText) => desk.write({ chartText }),}});}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const BackingFacts__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type BackingFacts__SvelteComponent_ = ReturnType<typeof BackingFacts__SvelteComponent_>;
/*Ωignore_endΩ*/export default BackingFacts__SvelteComponent_;