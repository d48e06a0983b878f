///<reference types="svelte" />
;
import { keptTheme, showTheme, THEMES, type Theme } from './theme.ts';
import { useWords } from '../words/use-words.ts';
function $$render() {

  
  

  let theme = $state<Theme>(keptTheme());

  function choose(wanted: Theme) {
    theme = wanted;
    showTheme(wanted);
  }

  const words = useWords();
;
async () => {


 { svelteHTML.createElement("div", {   "role":`group`,"aria-label":words.ready.light,});
     for(let name of __sveltets_2_ensureArray(THEMES)){name;
     { svelteHTML.createElement("button", {      "type":`button`,"aria-pressed":theme === name,"onclick":() => choose(name),});words.ready.lights[name]; }
  }
 }


};
return { props: {} as Record<string, never>, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const ThemeChoice__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type ThemeChoice__SvelteComponent_ = ReturnType<typeof ThemeChoice__SvelteComponent_>;
/*Ωignore_endΩ*/export default ThemeChoice__SvelteComponent_;