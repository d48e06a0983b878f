///<reference types="svelte" />
;
import RoleMark from '../parts/RoleMark.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    /** Whether an instrument is on the page. */
    placed: boolean;
  };function $$render() {

  
  

  let { placed }: Props = $props();
  const words = useWords();
;
async () => {


 { svelteHTML.createElement("ul", { "aria-label":words.playing.legend.name,});
   { svelteHTML.createElement("li", {}); { svelteHTML.createElement("span", { "class":`shore`,}); { const $$_kraMeloR3C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR3C({ target: __sveltets_2_any(), props: {    "role":`third`,"size":`1.2em`,}});} } words.playing.legend.landHere; }
  if(placed){
     { svelteHTML.createElement("li", {}); { const $$_kraMeloR2C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR2C({ target: __sveltets_2_any(), props: {    "role":`fifth`,"size":`0.85em`,}});} words.playing.legend.inChordNow; }
     { svelteHTML.createElement("li", {}); { const $$_kraMeloR2C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR2C({ target: __sveltets_2_any(), props: {    "role":`colour`,"size":`0.6em`,}});} words.playing.legend.fits; }
  }
   { svelteHTML.createElement("li", {  "class":`line`,});placed; { svelteHTML.createElement("span", { "class":`pen`,}); } words.playing.legend.heavyLine; }
   { svelteHTML.createElement("li", {  "class":`line`,});placed; { svelteHTML.createElement("span", { "class":`pen light`,}); } words.playing.legend.lightLine; }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Legend__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Legend__SvelteComponent_ = ReturnType<typeof Legend__SvelteComponent_>;
/*Ωignore_endΩ*/export default Legend__SvelteComponent_;