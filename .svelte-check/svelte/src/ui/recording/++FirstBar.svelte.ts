///<reference types="svelte" />
;
import type { RecordingDraft } from '../../state/recording-draft.svelte.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    draft: RecordingDraft;
    durationSeconds: number;
    /** Where the recording is heard now; null where it can't be. */
    here: (() => number | null) | null;
  };function $$render() {

  
  
  

  let { draft, durationSeconds, here }: Props = $props();
  const words = useWords();

  function takeOver() {
    const place = here?.() ?? null;
    if (place !== null) draft.firstBeatSeconds = place;
  }

  function type(event: Event & { currentTarget: HTMLInputElement }) {
    const seconds = event.currentTarget.valueAsNumber;
    if (Number.isFinite(seconds)) draft.firstBeatSeconds = Math.min(durationSeconds, seconds);
    event.currentTarget.value = String(draft.firstBeatSeconds);
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`first`,});
   { svelteHTML.createElement("label", {});
    words.review.firstBeatBefore;
     { svelteHTML.createElement("input", {             "type":`number`,"min":`0`,"max":durationSeconds,"step":`0.001`,"value":draft.firstBeatSeconds,"onchange":type,});}
    words.review.firstBeatAfter;
   }
  if(here !== null){ { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":takeOver,}});words.review.takePlaybackPlace; PlainButton}}
   { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => draft.moveByBeats(-1),}});words.recording.beatEarlier; PlainButton}
   { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => draft.moveByBeats(1),}});words.recording.beatLater; PlainButton}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const FirstBar__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type FirstBar__SvelteComponent_ = ReturnType<typeof FirstBar__SvelteComponent_>;
/*Ωignore_endΩ*/export default FirstBar__SvelteComponent_;