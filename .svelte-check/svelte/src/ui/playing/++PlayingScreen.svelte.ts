///<reference types="svelte" />
;
import type { Timeline } from '../../core/chart/timeline.ts';
import type { Landing } from '../../core/take/schema.ts';
import type { PlayingSettings } from '../../state/playing-settings.ts';
import type { LiveAim } from '../../state/live-state.svelte.ts';
import type { LiveMoment, LiveNote } from '../../state/session.svelte.ts';
import { keepAwake } from '../hands/wake-lock.ts';
import { viewOf } from '../instrument/views.ts';
import FormSheet from '../parts/FormSheet.svelte';
import { eachFrame } from '../parts/frames.ts';
import { landingSentence } from '../parts/sentences.ts';
import { sheetBars, tacetBars } from '../parts/sheet.ts';
import type { DialId, DialValues } from './dials.ts';
import Header from './Header.svelte';
import { passesOf, type PracticeSettings } from '../../state/practice-settings.ts';
import { momentOf, passAt, sameNote, samePlace, settledLanding, type Moment } from './moment.ts';
import { PlaceMark } from './form-place.ts';
import Legend from './Legend.svelte';
import Stage from './Stage.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    timeline: Timeline;
    live: () => LiveMoment | null;
    landings: readonly Landing[];
    /** The aim in hand, and how it goes. */
    aim: LiveAim | null;
    /** How many choruses the take will have; null until stopped. */
    choruses: number | null;
    settings: PlayingSettings & PracticeSettings;
    /** On the first take, and in the demo, the marks are explained. */
    occasion: 'take' | 'first take' | 'demo';
    /** null in the demo. */
    dials: DialValues | null;
    onturn: (id: DialId, value: number) => void;
    onstop: () => void;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  

  let { timeline, live, landings, aim, choruses, settings, occasion, dials, onturn, onstop }: Props =
    $props();
  const words = useWords();
  const demo = $derived(occasion === 'demo');

  const bars = $derived(sheetBars(timeline));
  let list = $state<HTMLOListElement>();
  let moment = $state.raw<Moment | null>(null);
  let note = $state.raw<LiveNote | null>(null);
  let sounding = $state(false);
  const place = new PlaceMark();

  /** Runs once a frame. What is read as text goes through state, and only when it changes. */
  function frame() {
    const now = live();
    if (now === null) return;
    if (!samePlace(moment, now)) moment = momentOf(now, timeline);
    if (now.note !== null && !sameNote(note, now.note)) note = now.note;
    sounding = now.note !== null;
    if (list !== undefined) place.move(list, now, timeline.beatsPerBar);
  }

  const latest = $derived(landings.at(-1) ?? null);
  const said = $derived(moment === null ? null : settledLanding(landings, moment));
  /** null where nobody trades. */
  const whose = $derived(moment?.turn?.whose ?? null);
  const chorus = $derived(Math.max(0, moment?.chorus ?? 0));
  /** Which time through the form it is, where that goes through keys; null where it stays in one. */
  const pass = $derived(passAt(moment?.beat ?? 0, timeline, passesOf(settings.practice)));
  /** The bars of this chorus in which the band has its turn. */
  const tacet = $derived(tacetBars(timeline, chorus));
;
async () => {


 { svelteHTML.createElement("svelte:window", {  "onresize":() => place.forget(),});}

  { svelteHTML.createElement("main", {        "class":`playing`,"tabindex":-1,[Symbol("@attach")]:eachFrame(frame),[Symbol("@attach")]:keepAwake,});whose === 'band';occasion !== 'take';
   { svelteHTML.createElement("h1", { "class":`only-heard`,});words.playing.title; }
   { const $$_redaeH1C = __sveltets_2_ensureComponent(Header); new $$_redaeH1C({ target: __sveltets_2_any(), props: {            "beatsPerBar":timeline.beatsPerBar,moment,choruses,"pass":demo ? null : pass,"levelDb":demo || settings.input === 'midi' ? null : () => live()?.levelDb ?? null,dials,onturn,onstop,}});}
   { const $$_egatS1C = __sveltets_2_ensureComponent(Stage); new $$_egatS1C({ target: __sveltets_2_any(), props: {        timeline,live,moment,note,sounding,latest,aim,settings,}});}
  if(occasion !== 'take'){ { const $$_dnegeL1C = __sveltets_2_ensureComponent(Legend); new $$_dnegeL1C({ target: __sveltets_2_any(), props: {  "placed":viewOf(settings.view) !== null,}});}}
   { svelteHTML.createElement("section", {    "class":`form`,"aria-label":words.playing.form,});viewOf(settings.view) !== null;
     { const $$_teehSmroF2C = __sveltets_2_ensureComponent(FormSheet); const $$_teehSmroF2 = new $$_teehSmroF2C({ target: __sveltets_2_any(), props: {           bars,landings,tacet,"mostInRow":4,"freshIndex":landings.length - 1,"label":words.ready.bars,list,}});/*Ωignore_startΩ*/() => list = __sveltets_2_any(null);/*Ωignore_endΩ*/$$_teehSmroF2.$$bindings = 'list';}
   }
  if(settings.speakLandings){
     { svelteHTML.createElement("p", {   "class":`only-heard`,"aria-live":`polite`,});said === null ? '' : landingSentence(said, words); }
     { svelteHTML.createElement("p", {   "class":`only-heard`,"aria-live":`polite`,});
      whose === null ? '' : whose === 'player' ? words.playing.yourTurn : words.playing.bandsTurn;
     }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const PlayingScreen__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type PlayingScreen__SvelteComponent_ = ReturnType<typeof PlayingScreen__SvelteComponent_>;
/*Ωignore_endΩ*/export default PlayingScreen__SvelteComponent_;