///<reference types="svelte" />
;
import type { Share } from '../../core/take/schema.ts';
import RoleMark from '../parts/RoleMark.svelte';
import { shareWords } from './share-words.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    name: string;
    share: Share;
    /** By length: hits are seconds. */
    seconds?: boolean;
  };function $$render() {

  
  
  
  

  let { name, share, seconds = false }: Props = $props();

  const words = useWords();
  const told = $derived(shareWords(share, seconds, words));
  const at = (portion: number) => `${portion * 100}%`;
;
async () => {


 { svelteHTML.createElement("div", { "class":`share`,});
   { svelteHTML.createElement("p", {}); { svelteHTML.createElement("span", { "class":`name`,});name; }  { svelteHTML.createElement("b", {});told.counts; } }
  if(share.share !== null){
     { svelteHTML.createElement("div", {   "class":`rule`,"aria-hidden":`true`,});
      if(share.low !== null && share.high !== null){
         { svelteHTML.createElement("span", {   "class":`doubt`,});__sveltets_2_ensureType(String, Number, at(share.low));__sveltets_2_ensureType(String, Number, at(share.high - share.low)); }
      }
      if(share.chance !== null){
         { svelteHTML.createElement("span", {  "class":`chance`,});__sveltets_2_ensureType(String, Number, at(share.chance)); { const $$_kraMeloR3C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR3C({ target: __sveltets_2_any(), props: {    "role":`outside`,"size":`1.3rem`,}});} }
      }
       { svelteHTML.createElement("span", {  "class":`here`,});__sveltets_2_ensureType(String, Number, at(share.share)); }
     }
  }
   { svelteHTML.createElement("p", { "class":`told`,});told.told; }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const ShareRule__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type ShareRule__SvelteComponent_ = ReturnType<typeof ShareRule__SvelteComponent_>;
/*Ωignore_endΩ*/export default ShareRule__SvelteComponent_;