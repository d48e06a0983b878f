///<reference types="svelte" />
;
import { tick } from 'svelte';
import type { Pages } from '../../state/pages.svelte.ts';
import { signsInText } from '../parts/engrave.ts';
import PlainButton from '../parts/PlainButton.svelte';
import RoleMark from '../parts/RoleMark.svelte';
import { useWords } from '../words/use-words.ts';
import { HELP_MARKS, HELP_WORDS } from './sections.ts';
;

  interface Props {
    pages: Pages;
  };function $$render() {

  
  
  
  
  
  
  

  let { pages }: Props = $props();
  const words = useWords();

  let dialog = $state<HTMLDialogElement>();

  $effect(() => {
    const entry = pages.help;
    if (dialog === undefined) return;
    if (entry === null) return dialog.close();
    if (!dialog.open) dialog.showModal();
    void tick().then(() => {
      const place = dialog?.querySelector<HTMLElement>(entry === '' ? 'h2' : `[data-entry="${entry}"]`);
      place?.scrollIntoView({ block: entry === '' ? 'end' : 'center' });
      place?.focus({ preventScroll: true });
    });
  });
;
async () => {



  { const $$_dialog0 = svelteHTML.createElement("dialog", {       "aria-labelledby":`help-title`,"onclose":() => pages.closeHelp(),"onkeydown":(event) => event.stopPropagation(),});dialog = $$_dialog0;
  if(pages.help !== null){
     { svelteHTML.createElement("header", {});
       { svelteHTML.createElement("h2", {   "id":`help-title`,"tabindex":-1,});words.help.title; }
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => pages.closeHelp(),}});words.help.close; PlainButton}
     }
     { svelteHTML.createElement("section", { "aria-labelledby":`help-marks`,});
       { svelteHTML.createElement("h3", { "id":`help-marks`,});words.help.sections.marks; }
       { svelteHTML.createElement("p", {});words.help.aboutMarks; }
       { svelteHTML.createElement("dl", {});
           for(let role of __sveltets_2_ensureArray(HELP_MARKS)){role;
           { svelteHTML.createElement("div", {        "class":`entry`,...__sveltets_2_empty({"data-entry":role ?? 'open'}),"tabindex":-1,});pages.help === (role ?? 'open');
             { svelteHTML.createElement("dt", {});
               { const $$_kraMeloR5C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR5C({ target: __sveltets_2_any(), props: {   role,"size":`1.5rem`,}});}
              role === null ? words.parts.open : words.music.roles[role];
             }
             { svelteHTML.createElement("dd", {});signsInText(words.parts.meanings[role ?? 'open']); }
           }
        }
       }
     }
       for(let { section, entries } of __sveltets_2_ensureArray(HELP_WORDS)){section;
       { svelteHTML.createElement("section", { "aria-labelledby":`help-${section}`,});
         { svelteHTML.createElement("h3", { "id":`help-${section}`,});words.help.sections[section]; }
         { svelteHTML.createElement("dl", {});
             for(let entry of __sveltets_2_ensureArray(entries)){entry;
            const { word, says } = words.help.entries[entry];
             { svelteHTML.createElement("div", {      "class":`entry`,...__sveltets_2_empty({"data-entry":entry}),"tabindex":-1,});pages.help === entry;
               { svelteHTML.createElement("dt", {});word; }
               { svelteHTML.createElement("dd", {});signsInText(says); }
             }
          }
         }
       }
    }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const HelpDialog__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type HelpDialog__SvelteComponent_ = ReturnType<typeof HelpDialog__SvelteComponent_>;
/*Ωignore_endΩ*/export default HelpDialog__SvelteComponent_;