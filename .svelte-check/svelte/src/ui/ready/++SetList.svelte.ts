///<reference types="svelte" />
;
import type { KeptChart } from '../../state/ports.ts';
import type { BackingRecord } from '../../state/chosen-backing.ts';
import { signsInText } from '../parts/engrave.ts';
import { clockWords, keyWords } from '../parts/sentences.ts';
import type { FormChoice } from './form-choice.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    forms: readonly FormChoice[];
    /** null: a chart of the player's own. */
    chosen: string | null;
    onchoose: (name: string | null) => void;
    /** The player's own that are kept, and the one of them on the stand. */
    kept: readonly KeptChart[];
    chosenKept: KeptChart | null;
    onkept: (chart: KeptChart) => void;
    /** The player's own backings, and the id of the one on the stand. */
    backings: readonly BackingRecord[];
    standing: string | null;
    onbacking: (id: string) => void;
  };function $$render() {
 const row/*Ωignore_positionΩ*/ = (value: string, title: string, trains: string, checked: boolean, choose: () => void)/*Ωignore_startΩ*/: ReturnType<import('svelte').Snippet>/*Ωignore_endΩ*/ => { async ()/*Ωignore_positionΩ*/ => {
   { svelteHTML.createElement("label", {});
     { svelteHTML.createElement("input", {        "type":`radio`,"name":`form`,value,checked,"onchange":choose,});}
     { svelteHTML.createElement("span", { "class":`title`,});title; }
     { svelteHTML.createElement("span", { "class":`trains`,});trains; }
   }
};return __sveltets_2_any(0)};
  
  
  
  
  
  

  let { forms, chosen, onchoose, kept, chosenKept, onkept, backings, standing, onbacking }: Props = $props();
  const words = useWords();

  const groups = $derived([...new Set(forms.map(({ group }) => group))]);
;
async () => {




 { svelteHTML.createElement("fieldset", {});
   { svelteHTML.createElement("legend", {});words.ready.setList; }
     for(let group of __sveltets_2_ensureArray(groups)){group;
    const own = forms.filter((form) => form.group === group);
     { svelteHTML.createElement("details", { "open":own.some(({ name }) => name === chosen),});
       { svelteHTML.createElement("summary", {});group; }
         for(let { name, title, trains } of __sveltets_2_ensureArray(own)){name;
        ;__sveltets_2_ensureSnippet(row(name, title, trains, standing === null && chosen === name, () => onchoose(name)));
      }
     }
  }
   { svelteHTML.createElement("details", {"open":true,});
     { svelteHTML.createElement("summary", {});words.ready.ownCharts; }
       for(let { id, title, durationSeconds } of __sveltets_2_ensureArray(backings)){id;
      ;__sveltets_2_ensureSnippet(row(
        `backing ${id}`,
        signsInText(title),
        words.ready.ownBacking({ length: clockWords(durationSeconds) }),
        standing === id,
        () => onbacking(id),
      ));
    }
       for(let chart of __sveltets_2_ensureArray(kept)){chart.id;
      const onStand = standing === null && chosen === null && chosenKept?.id === chart.id;
      ;__sveltets_2_ensureSnippet(row(
        `kept ${chart.id}`,
        signsInText(chart.title),
        words.ready.inKey({ key: keyWords(chart.key, words) }),
        onStand,
        () => onkept(chart),
      ));
    }
    ;__sveltets_2_ensureSnippet(row(
      '',
      words.ready.writeChart,
      words.ready.ownChanges,
      standing === null && chosen === null && chosenKept === null,
      () => onchoose(null),
    ));
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const SetList__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type SetList__SvelteComponent_ = ReturnType<typeof SetList__SvelteComponent_>;
/*Ωignore_endΩ*/export default SetList__SvelteComponent_;