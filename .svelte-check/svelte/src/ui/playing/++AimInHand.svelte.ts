///<reference types="svelte" />
;
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import type { LiveAim } from '../../state/live-state.svelte.ts';
import { signsInText, withSigns } from '../parts/engrave.ts';
import RoleMark from '../parts/RoleMark.svelte';
import { ofAll } from '../parts/sentences.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    aim: LiveAim;
    /** Tones of the chord now that the aim asks for while it lasts. */
    now: readonly TargetTone[];
  };function $$render() {

  
  
  
  
  
  

  let { aim, now }: Props = $props();
  const words = useWords();

  const names: Readonly<Record<string, string>> = $derived(words.playing.aims);
;
async () => {


 { svelteHTML.createElement("p", { "class":`aim`,});
   { svelteHTML.createElement("span", { "class":`what`,});
     { svelteHTML.createElement("span", {   "class":`head`,"aria-hidden":`true`,}); }
     { svelteHTML.createElement("span", { "class":`only-heard`,});words.playing.aimInHand;  }
     { svelteHTML.createElement("span", { "class":`name`,});signsInText(names[aim.id] ?? ''); }
   }
  if(aim.of > 0){
     { svelteHTML.createElement("b", { "aria-hidden":`true`,});ofAll(aim.hits, aim.of, words); }
     { svelteHTML.createElement("span", { "class":`only-heard`,});words.playing.aimSoFar({ hits: aim.hits, of: aim.of }); }
  }
  if(now.length > 0){
     { svelteHTML.createElement("span", { "class":`tones`,});
       { svelteHTML.createElement("span", { "class":`only-heard`,});words.playing.aimNow; }
         for(let tone of __sveltets_2_ensureArray(now)){tone.pitchClass;
         { svelteHTML.createElement("span", {  "class":`tone`,}); { const $$_kraMeloR3C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR3C({ target: __sveltets_2_any(), props: {      "role":tone.role,"size":`0.8em`,"label":words.music.roles[tone.role],}});}
          withSigns(tone.degree); }
      }
     }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const AimInHand__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type AimInHand__SvelteComponent_ = ReturnType<typeof AimInHand__SvelteComponent_>;
/*Ωignore_endΩ*/export default AimInHand__SvelteComponent_;