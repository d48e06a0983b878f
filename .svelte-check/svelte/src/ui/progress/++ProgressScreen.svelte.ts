///<reference types="svelte" />
;
import { measureProgress, type DueChange } from '../../core/practice/progress.ts';
import { setUpAgain } from '../../state/again.ts';
import type { AppState } from '../../state/app-state.ts';
import { dayOf, practisedTakes } from '../../state/practised-takes.ts';
import { signsInText } from '../parts/engrave.ts';
import Logo from '../parts/Logo.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import { keyWords, noteWords } from '../parts/sentences.ts';
import { useWords } from '../words/use-words.ts';
import Today from './Today.svelte';
import ProgressTable from './ProgressTable.svelte';
import TwoTakes from './TwoTakes.svelte';
;

  interface Props {
    app: AppState;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  
  

  let { app }: Props = $props();
  const words = useWords();

  const progress = $derived(measureProgress(practisedTakes(app.library.takes), dayOf(new Date())));
  const forms: Readonly<Record<string, { readonly title: string }>> = $derived(words.ready.forms);
  const aims: Readonly<Record<string, { readonly name: string }>> = $derived(words.report.aims.house);
  const formName = (form: string) => signsInText(forms[form]?.title ?? form);

  const back = () => app.pages.showProgress(false);

  /** The take's whole set-up, two bars round the change, and the tones that are wanted there. */
  function practise({ takeId, bar }: DueChange) {
    const take = app.library.takes.find(({ id }) => id === takeId);
    if (take === undefined) return;
    const { setup, session, backings } = app;
    const ready = setUpAgain(take, { aim: 'guide-tones' }, { setup, stand: backings });
    if (!ready.ok) return back();
    const { loop, keys } = setup.settings.practice;
    const bars = setup.timeline.ok ? setup.timeline.value.bars : 0;
    if (loop === null && keys === null && setup.backing === null && bar > 0 && bar + 1 < bars)
      setup.setPractice({ loop: { fromBar: bar, toBar: Math.min(bars, bar + 3) } });
    back();
    void session.start();
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`page`,});
   { svelteHTML.createElement("header", {});
     { const $$_ogoL2C = __sveltets_2_ensureComponent(Logo); new $$_ogoL2C({ target: __sveltets_2_any(), props: {}});}
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":back,}});words.progress.back; PlainButton}
   }
   { svelteHTML.createElement("main", { "tabindex":-1,});
     { svelteHTML.createElement("h1", {});words.progress.title; }
     { svelteHTML.createElement("p", { "class":`lead`,});
      progress.takes === 0
        ? words.progress.nothingYet
        : words.progress.counted({ takes: progress.takes, days: progress.days });
     }
    if(progress.takes > 0){
       { const $$_yadoT2C = __sveltets_2_ensureComponent(Today); new $$_yadoT2C({ target: __sveltets_2_any(), props: {     "due":progress.today,formName,"onpractise":practise,}});}
       { svelteHTML.createElement("div", { "class":`tables`,});
         { const $$_elbaTssergorP3C = __sveltets_2_ensureComponent(ProgressTable); new $$_elbaTssergorP3C({ target: __sveltets_2_any(), props: {       "title":words.progress.byAim,"rows":progress.byAim,"nameOf":(id) => signsInText(aims[id]?.name ?? id),}});}
         { const $$_elbaTssergorP3C = __sveltets_2_ensureComponent(ProgressTable); new $$_elbaTssergorP3C({ target: __sveltets_2_any(), props: {      "title":words.progress.byForm,"rows":progress.byForm,"nameOf":formName,}});}
          { const $$_elbaTssergorP3C = __sveltets_2_ensureComponent(ProgressTable); new $$_elbaTssergorP3C({ target: __sveltets_2_any(), props: {    "title":words.progress.byChord,"rows":progress.byChord,"chords":true,}});}
         { const $$_elbaTssergorP3C = __sveltets_2_ensureComponent(ProgressTable); new $$_elbaTssergorP3C({ target: __sveltets_2_any(), props: {       "title":words.progress.byKey,"rows":progress.byKey,"nameOf":(key) => (key.includes(' ') ? keyWords(key, words) : noteWords(key, words)),}});}
       }
       { const $$_sekaTowT2C = __sveltets_2_ensureComponent(TwoTakes); new $$_sekaTowT2C({ target: __sveltets_2_any(), props: {     "takes":app.library.takes,formName,"onopen":(id) => void app.session.openTake(id),}});}
    }
   }
 }

 { svelteHTML.createElement("svelte:window", {  "onkeydown":({ key }) => key === 'Escape' && app.pages.help === null && back(),});}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const ProgressScreen__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type ProgressScreen__SvelteComponent_ = ReturnType<typeof ProgressScreen__SvelteComponent_>;
/*Ωignore_endΩ*/export default ProgressScreen__SvelteComponent_;