///<reference types="svelte" />
;
import { wilsonInterval } from '../../core/base/statistics.ts';
;

  interface Props {
    hits: number;
    of: number;
  };function $$render() {

  

  let { hits, of }: Props = $props();

  const doubt = $derived(wilsonInterval(hits, of));
  const percent = (share: number) => `${100 * share}%`;
;
async () => {


if(doubt !== null){
   { svelteHTML.createElement("span", {   "class":`line`,"aria-hidden":`true`,});
     { svelteHTML.createElement("span", {   "class":`doubt`,});__sveltets_2_ensureType(String, Number, percent(doubt.low));__sveltets_2_ensureType(String, Number, percent(doubt.high - doubt.low)); }
     { svelteHTML.createElement("span", {  "class":`head`,});__sveltets_2_ensureType(String, Number, percent(hits / of)); }
   }
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const ShareLine__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type ShareLine__SvelteComponent_ = ReturnType<typeof ShareLine__SvelteComponent_>;
/*Ωignore_endΩ*/export default ShareLine__SvelteComponent_;