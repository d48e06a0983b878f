///<reference types="svelte" />
;
import HelpLink from './HelpLink.svelte';
import RoleMark from './RoleMark.svelte';
import { ROLES } from './roles.ts';
import { useWords } from '../words/use-words.ts';
function $$render() {

  
  
  
  

  const words = useWords();
;
async () => {


 { svelteHTML.createElement("ul", { "aria-label":words.parts.marks,});
     for(let role of __sveltets_2_ensureArray(ROLES)){role;
     { svelteHTML.createElement("li", {}); { const $$_kraMeloR2C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR2C({ target: __sveltets_2_any(), props: {   role,"size":`0.95em`,}});}  { const $$_kniLpleH2C = __sveltets_2_ensureComponent(HelpLink); new $$_kniLpleH2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"entry":role,}});words.music.roles[role]; HelpLink} }
  }
   { svelteHTML.createElement("li", {}); { const $$_kraMeloR2C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR2C({ target: __sveltets_2_any(), props: {    "role":null,"size":`0.95em`,}});}  { const $$_kniLpleH2C = __sveltets_2_ensureComponent(HelpLink); new $$_kniLpleH2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"entry":`open`,}});words.parts.open; HelpLink} }
 }


};
return { props: {} as Record<string, never>, exports: {}, bindings: "", slots: {}, events: {} }}
const MarksKey__SvelteComponent_ = __sveltets_2_isomorphic_component(__sveltets_2_with_any_event($$render()));
/*Ωignore_startΩ*/type MarksKey__SvelteComponent_ = InstanceType<typeof MarksKey__SvelteComponent_>;
/*Ωignore_endΩ*/export default MarksKey__SvelteComponent_;