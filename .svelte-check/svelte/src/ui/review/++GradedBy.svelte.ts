///<reference types="svelte" />
;
import type { Report } from '../../core/take/schema.ts';
import type { RecordingDraft } from '../../state/recording-draft.svelte.ts';
import { signsInText } from '../parts/engrave.ts';
import PlainButton from '../parts/PlainButton.svelte';
import FirstBar from '../recording/FirstBar.svelte';
import RecordingFields from '../recording/RecordingFields.svelte';
import BackingOut from './BackingOut.svelte';
import type { OpenedRecording } from './opened-recording.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    recording: OpenedRecording;
    source: Report['source'];
    /** Where the playback stands; null where there is none. */
    here: () => number | null;
  };function $$render() {

  
  
  
  
  
  
  
  
  

  let { recording, source, here }: Props = $props();
  const words = useWords();

  /** What is being changed; null while it stands as it was graded. */
  let draft = $state.raw<RecordingDraft | null>(null);

  function grade(event: SubmitEvent) {
    event.preventDefault();
    if (draft !== null && draft.setup.timeline.ok) recording.oncorrect(draft);
    draft = null;
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`graded-by`,});
  if(draft === null){
     { svelteHTML.createElement("p", {});
      words.recording.gradedBy({ chart: signsInText(recording.chart), ...recording.facts });
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => (draft = recording.draft()),}});words.recording.change; PlainButton}
     }
  }else{
     { svelteHTML.createElement("form", {   "onsubmit":grade,"aria-label":words.recording.change,});
       { const $$_sdleiFgnidroceR2C = __sveltets_2_ensureComponent(RecordingFields); new $$_sdleiFgnidroceR2C({ target: __sveltets_2_any(), props: {      "setup":draft.setup,"forms":recording.forms,"songbook":recording.songbook,}});}
       { const $$_raBtsriF2C = __sveltets_2_ensureComponent(FirstBar); new $$_raBtsriF2C({ target: __sveltets_2_any(), props: {    draft,"durationSeconds":source.durationSeconds,here,}});}
       { svelteHTML.createElement("div", { "class":`on`,});
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"strong":true,"type":`submit`,"disabled":!draft.setup.timeline.ok,}});words.review.gradeAgain;  PlainButton}
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => (draft = null),}});words.recording.leave; PlainButton}
       }
     }
  }
  if(recording.backingName !== undefined){
     { const $$_tuOgnikcaB1C = __sveltets_2_ensureComponent(BackingOut); new $$_tuOgnikcaB1C({ target: __sveltets_2_any(), props: {      "name":recording.backingName,"found":source.backing,"onbacking":recording.onbacking,}});}
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const GradedBy__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type GradedBy__SvelteComponent_ = ReturnType<typeof GradedBy__SvelteComponent_>;
/*Ωignore_endΩ*/export default GradedBy__SvelteComponent_;