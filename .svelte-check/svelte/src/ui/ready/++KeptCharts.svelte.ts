///<reference types="svelte" />
;
import type { Setup } from '../../state/setup.svelte.ts';
import type { Songbook } from '../../state/songbook.svelte.ts';
import { CHART_FILES } from '../parts/accepted-files.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    setup: Setup;
    songbook: Songbook;
  };function $$render() {

  
  
  
  
  

  let { setup, songbook }: Props = $props();
  const words = useWords();

  const text = $derived(setup.settings.ownChart);
  const kept = $derived(songbook.withText(text));
  /** What is being typed; null until then: the title it has, or the one the chart gives itself. */
  let typed = $state<string | null>(null);
  const title = $derived(typed ?? kept?.title ?? setup.ownTitle ?? '');
  const writtenOver = $derived(
    kept === null && songbook.charts.some((chart) => chart.title === title.trim()),
  );
  const ready = $derived(setup.chart.ok && title.trim() !== '');

  let chooser = $state<HTMLInputElement>();

  async function openFile(event: Event & { currentTarget: HTMLInputElement }) {
    const input = event.currentTarget;
    const file = input.files?.[0];
    const opened = file ? await songbook.open(file) : null;
    input.value = '';
    if (opened === null) return;
    setup.writeChart(opened, null);
    if (setup.chart.ok && setup.chart.value.bpm !== null) setup.setBpm(setup.chart.value.bpm);
    typed = null;
  }

  async function keep() {
    if (kept === null) await songbook.keep(title, text);
    else await songbook.rename(kept.id, title);
    setup.nameChart(title);
    typed = null;
  }

  async function remove() {
    if (kept !== null) await songbook.remove(kept.id);
    typed = null;
  }
;
async () => {


  { svelteHTML.createElement("form", {  "onsubmit":(event) => {
    event.preventDefault();
    if (ready) void keep();
  },});
   { svelteHTML.createElement("label", {});
     { svelteHTML.createElement("span", {});words.ready.chart.title; }
     { svelteHTML.createElement("input", {           "type":`text`,"autocomplete":`off`,"maxlength":80,"value":title,"oninput":(event) => (typed = event.currentTarget.value),});}
   }
  if(kept === null){
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"type":`submit`,"disabled":!ready,}});writtenOver ? words.ready.chart.keepOver : words.ready.chart.keep;  PlainButton}
  }else{
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"type":`submit`,"disabled":!ready || title.trim() === kept.title,}});words.ready.chart.rename;  PlainButton}
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"aria-label":words.ready.chart.removeNamed({ title: kept.title }),"onclick":() => void remove(),}});words.ready.chart.remove;  PlainButton}
  }
   { svelteHTML.createElement("span", { "class":`files`,});
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => chooser?.click(),}});words.ready.chart.open; PlainButton}
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":!setup.chart.ok,"onclick":() => songbook.save(title, text),}});words.ready.chart.save;  PlainButton}
     { const $$_input2 = svelteHTML.createElement("input", {           "type":`file`,"aria-label":words.ready.chart.file,"accept":CHART_FILES,"onchange":openFile,"hidden":true,});chooser = $$_input2;}
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const KeptCharts__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type KeptCharts__SvelteComponent_ = ReturnType<typeof KeptCharts__SvelteComponent_>;
/*Ωignore_endΩ*/export default KeptCharts__SvelteComponent_;