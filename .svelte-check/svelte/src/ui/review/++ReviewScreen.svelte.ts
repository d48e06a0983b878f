///<reference types="svelte" />
;
import type { Timeline } from '../../core/chart/timeline.ts';
import { aimWords } from '../../core/report/aim-sentences.ts';
import { useWords } from '../words/use-words.ts';
import type { SuspectedActions } from './suspected-actions.ts';
import type { Report } from '../../core/take/schema.ts';
import type { ExportPart } from '../../state/export-files.ts';
import HelpLink from '../parts/HelpLink.svelte';
import { signsInText } from '../parts/engrave.ts';
import FormSheet from '../parts/FormSheet.svelte';
import Logo from '../parts/Logo.svelte';
import MarksKey from '../parts/MarksKey.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import { sheetBars } from '../parts/sheet.ts';
import Advice from './Advice.svelte';
import type { AdviceVerbs } from './advice-verbs.ts';
import BesideFirst from './BesideFirst.svelte';
import type { PlayAgain } from './play-again.ts';
import type { BarsToTry } from '../../state/tries.svelte.ts';
import Countdown from './Countdown.svelte';
import Aims from './Aims.svelte';
import GradedBy from './GradedBy.svelte';
import { firstLandingOf, lineNotes, placeOf } from './line-notes.ts';
import type { LineNote } from './line-notes.ts';
import type { OpenedRecording } from './opened-recording.ts';
import TakeStrip from './TakeStrip.svelte';
import Palette from './Palette.svelte';
import type { PlaybackVerbs } from './playback-verbs.ts';
import Shares from './Shares.svelte';
import { takeFacts } from './take-facts.ts';
import SuspectedDelay from './SuspectedDelay.svelte';
import TakeAway from './TakeAway.svelte';
import TakeMarks from '../parts/TakeMarks.svelte';
import type { Naming } from '../parts/naming.ts';
import TakeSentence from './TakeSentence.svelte';
import TeacherHears from './TeacherHears.svelte';
import type { TakeFiles } from './take-files.ts';
;

  interface Props {
    take: {
      readonly title: string;
      /** null for a take that is not kept. */
      readonly naming: Naming | null;
      readonly report: Report;
      readonly timeline: Timeline;
      /** The take that its bars are from, where they were tried again. */
      readonly first: { readonly report: Report; readonly bars: BarsToTry } | null;
    };
    /** null where the sound can't be played. */
    playback: PlaybackVerbs | null;
    /** null for a take that was played here. */
    recording: OpenedRecording | null;
    files: TakeFiles;
    suspected: SuspectedActions;
    /** How each piece of advice is heard; null where the sound can't be played. */
    verbs: AdviceVerbs | null;
    again: PlayAgain;
    onback: () => void;
    /** What the player says of a note: whether it counts, or, with null, that it is as it was heard. */
    onnote: (note: LineNote, counts: boolean | null) => void;
    onsave: (part: ExportPart) => void;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  

  let { take, playback, recording, files, suspected, verbs, again, onback, onnote, onsave }: Props = $props();
  const words = useWords();
  const { title, naming, report, timeline, first } = $derived(take);

  /** The first landing is explained at first, to show that each note can be. */
  // svelte-ignore state_referenced_locally
  let chosen = $state(firstLandingOf(take.report));
  let strip = $state<HTMLElement>();
  const line = $derived(lineNotes(report));
  const bars = $derived(sheetBars(timeline));
  /** The bars of the first piece of advice: what the one button does, until the aim in hand is reached. */
  const toTry = $derived.by(() => {
    const reached = report.aims.some(({ tried, verdict }) => tried && verdict === 'reached');
    return reached || report.suspected !== null ? null : (verbs?.bars(0) ?? null);
  });
  const nextAim = $derived(report.aims.find(({ id }) => id === report.nextAim?.id));

  function chooseLanding(index: number) {
    const note = report.landings[index]?.note ?? null;
    if (note !== null) showNote(note);
  }

  /** Chosen from elsewhere on the page: the line comes into sight with it. */
  function showNote(note: number) {
    chosen = placeOf(line, note);
    strip?.scrollIntoView({ block: 'nearest' });
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`page`,});
   { svelteHTML.createElement("header", {});
     { const $$_ogoL2C = __sveltets_2_ensureComponent(Logo); new $$_ogoL2C({ target: __sveltets_2_any(), props: {}});}
     { svelteHTML.createElement("nav", { "aria-label":words.review.thisTake,});
       { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":onback,}});words.review.back; PlainButton}
       { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onsave('report'),}});words.review.saveReport; PlainButton}
      if(files.line !== null){
         { const $$_nottuBnialP3C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP3C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },"onclick":() => onsave('line'),}});files.line === 'sound' ? words.review.saveSound : words.review.saveNotes;  PlainButton}
      }
     }
   }
   { svelteHTML.createElement("main", { "tabindex":-1,});
     { svelteHTML.createElement("section", {   "class":`verdict`,"aria-label":words.review.inASentence,});
       { svelteHTML.createElement("div", { "class":`naming`,});
         { svelteHTML.createElement("p", { "class":`facts`,});signsInText(title);  takeFacts(report, words); }
        if(naming !== null){ { const $$_skraMekaT4C = __sveltets_2_ensureComponent(TakeMarks); new $$_skraMekaT4C({ target: __sveltets_2_any(), props: {  title,naming,}});}}
       }
       { const $$_ecnetneSekaT3C = __sveltets_2_ensureComponent(TakeSentence); new $$_ecnetneSekaT3C({ target: __sveltets_2_any(), props: {   report,"onchart":suspected.onchart,}});}
      if(report.suspectedDelay !== null){
         { svelteHTML.createElement("div", { "class":`timing`,});
           { const $$_yaleDdetcepsuS4C = __sveltets_2_ensureComponent(SuspectedDelay); new $$_yaleDdetcepsuS4C({ target: __sveltets_2_any(), props: {    "suspected":report.suspectedDelay,"actions":suspected.delay,}});}
         }
      }
       { svelteHTML.createElement("div", { "class":`on`,});
        if(first === null && toTry !== null){
           { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"strong":true,"onclick":() => again.ontry(toTry),}});words.review.tryBars(toTry); PlainButton}
        }
         { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"strong":first !== null || toTry === null,"onclick":() => again.onagain(),}});words.review.goOn[again.how];  PlainButton}
        if(first !== null){
           { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => again.onwhole(),}});words.review.wholeForm; PlainButton}
        }
        if(nextAim && !nextAim.tried){
           { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },"onclick":() => again.onnextaim(),}});words.review.nextAim({ name: signsInText(aimWords(nextAim, words).name) });  PlainButton}
        }
        if(again.inSeconds !== null && playback?.playing !== true){ { const $$_nwodtnuoC4C = __sveltets_2_ensureComponent(Countdown); new $$_nwodtnuoC4C({ target: __sveltets_2_any(), props: {     "seconds":again.inSeconds,"ongo":() => again.onagain(),}});}}
       }
     }
    if(first !== null){ { const $$_tsriFediseB2C = __sveltets_2_ensureComponent(BesideFirst); new $$_tsriFediseB2C({ target: __sveltets_2_any(), props: {      "first":first.report,"now":report,"bars":first.bars,}});}}
     { svelteHTML.createElement("section", { "aria-labelledby":`form`,});
       { svelteHTML.createElement("h2", { "id":`form`,}); { const $$_kniLpleH4C = __sveltets_2_ensureComponent(HelpLink); new $$_kniLpleH4C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"entry":`landing`,}});words.review.landings; HelpLink} }
       { const $$_teehSmroF3C = __sveltets_2_ensureComponent(FormSheet); new $$_teehSmroF3C({ target: __sveltets_2_any(), props: {          bars,"landings":report.landings,"memory":24,"label":words.review.barsOfForm,"onlanding":chooseLanding,}});}
       { const $$_yeKskraM3C = __sveltets_2_ensureComponent(MarksKey); new $$_yeKskraM3C({ target: __sveltets_2_any(), props: {}});}
     }
     { const $$_section2 = svelteHTML.createElement("section", {    "class":`strip`,"aria-labelledby":`line`,});strip = $$_section2;
       { svelteHTML.createElement("h2", { "id":`line`,});words.review.line; }
      if(recording !== null){
         { const $$_yBdedarG3C = __sveltets_2_ensureComponent(GradedBy); new $$_yBdedarG3C({ target: __sveltets_2_any(), props: {     recording,"source":report.source,"here":() => playback?.seconds ?? null,}});}
      }
       { const $$_pirtSekaT3C = __sveltets_2_ensureComponent(TakeStrip); new $$_pirtSekaT3C({ target: __sveltets_2_any(), props: {         report,timeline,line,chosen,playback,"onchoose":(place) => (chosen = place),onnote,}});}
     }
    if(report.advice.length > 0){ { const $$_ecivdA2C = __sveltets_2_ensureComponent(Advice); new $$_ecivdA2C({ target: __sveltets_2_any(), props: {        "advice":report.advice,verbs,"onchoose":showNote,"ontry":(bars) => again.ontry(bars),}});}}
     { const $$_serahS2C = __sveltets_2_ensureComponent(Shares); new $$_serahS2C({ target: __sveltets_2_any(), props: {  "shares":report.shares,}});}
     { const $$_sraeHrehcaeT2C = __sveltets_2_ensureComponent(TeacherHears); new $$_sraeHrehcaeT2C({ target: __sveltets_2_any(), props: { report,}});}
     { svelteHTML.createElement("div", { "class":`two`,});
      if(report.aims.length > 0){ { const $$_smiA3C = __sveltets_2_ensureComponent(Aims); new $$_smiA3C({ target: __sveltets_2_any(), props: {       "aims":report.aims,"nextAim":report.nextAim,"onnext":() => again.onnextaim(),}});}}
       { const $$_ettelaP3C = __sveltets_2_ensureComponent(Palette); new $$_ettelaP3C({ target: __sveltets_2_any(), props: {    "thirds":report.thirds,"palette":report.palette,}});}
     }
     { const $$_yawAekaT2C = __sveltets_2_ensureComponent(TakeAway); new $$_yawAekaT2C({ target: __sveltets_2_any(), props: {  files,onsave,}});}
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const ReviewScreen__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type ReviewScreen__SvelteComponent_ = ReturnType<typeof ReviewScreen__SvelteComponent_>;
/*Ωignore_endΩ*/export default ReviewScreen__SvelteComponent_;