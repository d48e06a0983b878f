///<reference types="svelte" />
;
import type { SoundCheck } from '../../state/sound-check.svelte.ts';
import Logo from '../parts/Logo.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import DevicePick from './DevicePick.svelte';
import LevelLine from './LevelLine.svelte';
import Strings from './Strings.svelte';
import Delay from './Delay.svelte';
import { describeLeak } from './describe-measurements.ts';
import { describeNotice, describeProblem } from '../../core/words/problem.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    check: SoundCheck;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  

  let { check }: Props = $props();
  const words = useWords();

  const room = $derived(check.room);
  const leak = $derived(room && describeLeak(room, words));
  const busy = $derived(check.step !== 'listening' || check.level === null);
;
async () => {


 { svelteHTML.createElement("div", { "class":`page`,});
   { svelteHTML.createElement("header", {});
     { const $$_ogoL2C = __sveltets_2_ensureComponent(Logo); new $$_ogoL2C({ target: __sveltets_2_any(), props: {}});}
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => check.close(),}});words.soundCheck.back; PlainButton}
   }
   { svelteHTML.createElement("main", { "tabindex":-1,});
     { svelteHTML.createElement("h1", {});words.soundCheck.title; }
     { svelteHTML.createElement("div", { "class":`devices`,});
       { const $$_kciPeciveD3C = __sveltets_2_ensureComponent(DevicePick); new $$_kciPeciveD3C({ target: __sveltets_2_any(), props: {         "name":words.soundCheck.microphone,"choices":check.inputs,"chosen":check.inputId,"onchoose":(id) => void check.chooseInput(id),}});}
      if(check.outputs.length > 0){
         { const $$_kciPeciveD3C = __sveltets_2_ensureComponent(DevicePick); new $$_kciPeciveD3C({ target: __sveltets_2_any(), props: {         "name":words.soundCheck.output,"choices":check.outputs,"chosen":check.outputId,"onchoose":(id) => void check.chooseOutput(id),}});}
      }
     }
    if(check.problem !== null){
       { svelteHTML.createElement("p", {   "class":`problem`,"role":`alert`,});describeProblem(check.problem, words); }
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => void check.open(),}});words.soundCheck.listenAgain; PlainButton}
    }
       for(let warning of __sveltets_2_ensureArray(check.warnings)){warning.code; { svelteHTML.createElement("p", {});describeNotice(warning, words); }}

     { svelteHTML.createElement("section", { "aria-labelledby":`level`,});
       { svelteHTML.createElement("h2", { "id":`level`,});words.soundCheck.level; }
       { const $$_eniLleveL3C = __sveltets_2_ensureComponent(LevelLine); new $$_eniLleveL3C({ target: __sveltets_2_any(), props: {  "level":check.level,}});}
     }

    if(check.tuning.strings.length > 0){
       { svelteHTML.createElement("section", { "aria-labelledby":`strings`,});
         { svelteHTML.createElement("h2", { "id":`strings`,});words.soundCheck.strings; }
         { const $$_sgnirtS3C = __sveltets_2_ensureComponent(Strings); new $$_sgnirtS3C({ target: __sveltets_2_any(), props: {  "tuning":check.tuning,}});}
       }
    }

     { svelteHTML.createElement("div", { "class":`room`,});
       { svelteHTML.createElement("section", { "aria-labelledby":`sweep`,});
         { svelteHTML.createElement("h2", { "id":`sweep`,});words.soundCheck.room; }
         { svelteHTML.createElement("p", { "id":`caution`,});words.soundCheck.caution; }
         { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: {     children:() => { return __sveltets_2_any(0); },"strong":true,"disabled":busy,"aria-describedby":`caution`,"onclick":() => void check.sweep(),}});
          check.step === 'sweeping' ? words.soundCheck.sweeping : words.soundCheck.playSweeps;
         PlainButton}
         { svelteHTML.createElement("p", { "role":`status`,});leak ?? ''; }
       }
       { const $$_yaleD3C = __sveltets_2_ensureComponent(Delay); new $$_yaleD3C({ target: __sveltets_2_any(), props: {  check,busy,}});}
     }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const SoundCheckScreen__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type SoundCheckScreen__SvelteComponent_ = ReturnType<typeof SoundCheckScreen__SvelteComponent_>;
/*Ωignore_endΩ*/export default SoundCheckScreen__SvelteComponent_;