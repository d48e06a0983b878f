///<reference types="svelte" />
;
import { compareCounts } from '../../core/practice/compare.ts';
import type { TakeCount } from '../../core/practice/trend.ts';
import { formOf } from '../../state/practised-takes.ts';
import type { TakeCard, TakeId } from '../../state/take.ts';
import HelpLink from '../parts/HelpLink.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import { keyWords, ofAll } from '../parts/sentences.ts';
import { useWords } from '../words/use-words.ts';
import ShareLine from './ShareLine.svelte';
;

  interface Props {
    /** Newest first. */
    takes: readonly TakeCard[];
    formName: (form: string) => string;
    onopen: (id: TakeId) => void;
  };function $$render() {

  
  
  
  
  
  
  
  
  

  let { takes, formName, onopen }: Props = $props();
  const words = useWords();

  const counted = $derived(takes.filter(({ summary }) => (summary?.counts?.changes.length ?? 0) > 0));
  let chosen = $state<{ first: TakeId | null; second: TakeId | null }>({ first: null, second: null });

  const take = (id: TakeId | null) => counted.find((one) => one.id === id);
  /** The newest, and the one before it of the same form. */
  const second = $derived(take(chosen.second) ?? counted[0]);
  const first = $derived(
    take(chosen.first) ??
      counted.find((one) => one !== second && second !== undefined && formOf(one) === formOf(second)) ??
      counted.find((one) => one !== second),
  );

  const all = (card: TakeCard): TakeCount =>
    (card.summary?.counts?.choruses ?? []).reduce(
      (sum, { hits, of }) => ({ hits: sum.hits + hits, of: sum.of + of }),
      { hits: 0, of: 0 },
    );
  const rows = $derived(
    first === undefined || second === undefined
      ? []
      : Array.from(
          {
            length: Math.max(...[first, second].map((card) => card.summary?.counts?.choruses.length ?? 0)),
          },
          (_, chorus) => ({
            chorus,
            counts: [first, second].map((card) => card.summary?.counts?.choruses[chorus] ?? null),
          }),
        ),
  );

  const dates = $derived(
    new Intl.DateTimeFormat(navigator.languages.find((tag) => tag.startsWith(words.tag)) ?? words.tag, {
      day: 'numeric',
      month: 'short',
      hour: '2-digit',
      minute: '2-digit',
    }),
  );
  const nameOf = (card: TakeCard) =>
    `${card.name || words.parts.titleInKey({ title: formName(formOf(card)), key: keyWords(card.key, words) })}, ${dates.format(new Date(card.startedAt))}`;
;
async () => {


if(first !== undefined && second !== undefined){
  const difference = compareCounts(all(first), all(second));
   { svelteHTML.createElement("section", { "aria-labelledby":`two-takes`,});
     { svelteHTML.createElement("h2", { "id":`two-takes`,}); { const $$_kniLpleH2C = __sveltets_2_ensureComponent(HelpLink); new $$_kniLpleH2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"entry":`doubt`,}});words.progress.twoTakes; HelpLink} }
     { svelteHTML.createElement("p", { "class":`told`,});words.progress.differences[difference.told]; }
     { svelteHTML.createElement("table", {});
       { svelteHTML.createElement("thead", {});
         { svelteHTML.createElement("tr", {});
           { svelteHTML.createElement("td", {}); }
             for(let { id, place } of __sveltets_2_ensureArray(([{ id: first.id, place: 'first' as const }, { id: second.id, place: 'second' as const }]))){place;
             { svelteHTML.createElement("th", { "scope":`col`,});
               { svelteHTML.createElement("label", {});
                 { svelteHTML.createElement("span", { "class":`only-heard`,});words.progress.takeChoice[place]; }
                 { svelteHTML.createElement("select", {     "value":id,"onchange":(event) => (chosen = { ...chosen, [place]: event.currentTarget.value }),});
                     for(let card of __sveltets_2_ensureArray(counted)){card.id; { svelteHTML.createElement("option", { "value":card.id,});nameOf(card); }}
                 }
               }
               { const $$_nottuBnialP5C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP5C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onopen(id),}});words.progress.openTake; PlainButton}
             }
          }
         }
       }
       { svelteHTML.createElement("tbody", {});
           for(let { chorus, counts } of __sveltets_2_ensureArray(rows)){chorus;
           { svelteHTML.createElement("tr", {});
             { svelteHTML.createElement("th", { "scope":`row`,});words.progress.chorus({ chorus: chorus + 1 }); }
                for(let count of __sveltets_2_ensureArray(counts)){let side = 1;side; { svelteHTML.createElement("td", {});
                if(count !== null && count.of > 0){
                   { svelteHTML.createElement("b", {});ofAll(count.hits, count.of, words); } { const $$_eniLerahS5C = __sveltets_2_ensureComponent(ShareLine); new $$_eniLerahS5C({ target: __sveltets_2_any(), props: { ...count,}});}
                }else{ }
               }}
           }
        }
         { svelteHTML.createElement("tr", { "class":`sum`,});
           { svelteHTML.createElement("th", { "scope":`row`,});words.progress.wholeTake; }
              for(let count of __sveltets_2_ensureArray(([all(first), all(second)]))){let side = 1;side; { svelteHTML.createElement("td", {});
               { svelteHTML.createElement("b", {});ofAll(count.hits, count.of, words); } { const $$_eniLerahS5C = __sveltets_2_ensureComponent(ShareLine); new $$_eniLerahS5C({ target: __sveltets_2_any(), props: { ...count,}});}
             }}
         }
       }
     }
   }
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const TwoTakes__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type TwoTakes__SvelteComponent_ = ReturnType<typeof TwoTakes__SvelteComponent_>;
/*Ωignore_endΩ*/export default TwoTakes__SvelteComponent_;