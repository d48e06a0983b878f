///<reference types="svelte" />
;
import { languageCodes, languages, type Language } from '../../core/words/languages.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    /** The language that holds now. */
    language: Language;
    onchoose: (language: Language) => void;
  };function $$render() {

  
  

  let { language, onchoose }: Props = $props();
  const words = useWords();
;
async () => {


  { svelteHTML.createElement("select", {      "aria-label":words.ready.language,"value":language,"onchange":(event) => onchoose(event.currentTarget.value as Language),});
     for(let code of __sveltets_2_ensureArray(languageCodes)){code;
     { svelteHTML.createElement("option", {   "value":code,"lang":code,});languages[code].name; }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const LanguageChoice__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type LanguageChoice__SvelteComponent_ = ReturnType<typeof LanguageChoice__SvelteComponent_>;
/*Ωignore_endΩ*/export default LanguageChoice__SvelteComponent_;