///<reference types="svelte" />
;
import { readingOf } from '../../core/music/reading.ts';
import type { TakeCard, TakeId, TakeMark, UnfinishedTake } from '../../state/take.ts';
import { signsInText } from '../parts/engrave.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { cardNaming } from '../parts/naming.ts';
import TakeMarks from '../parts/TakeMarks.svelte';
import { clockWords, takeTitle } from '../parts/sentences.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    takes: readonly TakeCard[];
    unfinished: readonly UnfinishedTake[];
    onopen: (id: TakeId) => void;
    onremove: (id: TakeId) => void;
    onmark: (id: TakeId, change: TakeMark) => void;
  };function $$render() {

  
  
  
  
  
  
  
  

  let { takes, unfinished, onopen, onremove, onmark }: Props = $props();
  const words = useWords();

  /** Titles stand at concert pitch, as they were kept. */
  const AS_KEPT = readingOf(null, 'concert');

  /** The take whose removal is being asked about. */
  let asking = $state<TakeId | null>(null);

  let heldOnly = $state(false);
  const shown = $derived(
    heldOnly && takes.some(({ starred }) => starred) ? takes.filter(({ starred }) => starred) : takes,
  );

  /** Dates as the player's country writes them, where its language is the page's. */
  const dates = $derived(
    new Intl.DateTimeFormat(navigator.languages.find((tag) => tag.startsWith(words.tag)) ?? words.tag, {
      day: 'numeric',
      month: 'short',
      hour: '2-digit',
      minute: '2-digit',
    }),
  );

  function landed({ summary }: TakeCard): string {
    if (summary === null) return words.ready.takes.notGraded;
    const { count, open, thirds } = summary.landings;
    const played = count - open;
    return played === 0
      ? words.ready.takes.noLandings
      : words.ready.takes.thirds({ thirds, landings: played });
  }
;
async () => {


   for(let take of __sveltets_2_ensureArray(unfinished)){take.id;
   { svelteHTML.createElement("div", {   "class":`rescued`,"role":`status`,});
     { svelteHTML.createElement("p", {});
      words.ready.takes.cutOff;  { svelteHTML.createElement("b", {});signsInText(takeTitle(take.details, AS_KEPT, words)); }
      words.ready.takes.kept({ length: clockWords(take.durationSeconds) });
     }
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onopen(take.id),}});words.ready.takes.grade; PlainButton}
     { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onremove(take.id),}});words.ready.takes.throwAway; PlainButton}
   }
}

if(takes.length > 0){
   { svelteHTML.createElement("section", { "aria-labelledby":`takes`,});
     { svelteHTML.createElement("h2", { "id":`takes`,});words.ready.takes.heading; }
    if(takes.some(({ starred }) => starred)){
       { svelteHTML.createElement("label", { "class":`held`,});
         { svelteHTML.createElement("input", {    "type":`checkbox`,"bind:checked":heldOnly,});/*Ωignore_startΩ*/() => heldOnly = __sveltets_2_any(null);/*Ωignore_endΩ*/}
        words.ready.takes.heldOnly;
       }
    }
     { svelteHTML.createElement("ol", {});
         for(let take of __sveltets_2_ensureArray(shown)){take.id;
        const title = takeTitle(take, AS_KEPT, words);
         { svelteHTML.createElement("li", {});
           { svelteHTML.createElement("button", {   "class":`open`,"onclick":() => onopen(take.id),});
             { svelteHTML.createElement("span", { "class":`title`,});signsInText(title); }
             { svelteHTML.createElement("span", {  "class":`facts`,});dates.format(new Date(take.startedAt));  take.source === 'recording'
                ? `${words.ready.takes.recording} · `
                : '';clockWords(take.durationSeconds);  landed(take); }
           }
           { const $$_skraMekaT3C = __sveltets_2_ensureComponent(TakeMarks); new $$_skraMekaT3C({ target: __sveltets_2_any(), props: {     "title":signsInText(title),"naming":cardNaming(take, (change) => onmark(take.id, change)),}});}
          if(asking === take.id){
             { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onremove(take.id),}});words.ready.takes.removeForGood; PlainButton}
             { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => (asking = null),}});words.ready.takes.keep; PlainButton}
          }else{
             { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"aria-label":words.ready.takes.removeNamed({ title }),"onclick":() => (asking = take.id),}});words.ready.takes.remove;  PlainButton}
          }
         }
      }
     }
   }
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Takes__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Takes__SvelteComponent_ = ReturnType<typeof Takes__SvelteComponent_>;
/*Ωignore_endΩ*/export default Takes__SvelteComponent_;