///<reference types="svelte" />
;
import type { Language } from '../../core/words/languages.ts';
import type { AppState } from '../../state/app-state.ts';
import type { RecordingFiles } from '../../state/open-take.ts';
import type { TakeId, TakeMark } from '../../state/take.ts';
import BackingControls from '../backing/BackingControls.svelte';
import OpenBacking from '../backing/OpenBacking.svelte';
import ThemeChoice from '../parts/ThemeChoice.svelte';
import LanguageChoice from '../parts/LanguageChoice.svelte';
import Logo from '../parts/Logo.svelte';
import PageLinks from './PageLinks.svelte';
import PlainButton from '../parts/PlainButton.svelte';
import type { FormChoice } from './form-choice.ts';
import OpenFiles from './OpenFiles.svelte';
import StartByNotes from './StartByNotes.svelte';
import PlayerSettings from './PlayerSettings.svelte';
import Practice from './Practice.svelte';
import SetList from './SetList.svelte';
import Sheet from './Sheet.svelte';
import BandLevels from './BandLevels.svelte';
import Takes from './Takes.svelte';
import { describeOpening } from './describe-opening.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    app: AppState;
    forms: readonly FormChoice[];
    /** The language that holds now. */
    language: Language;
    onrecording: (files: RecordingFiles) => void;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  

  let { app, forms, language, onrecording }: Props = $props();
  const words = useWords();

  const { setup, session, startSignal, midi, library, songbook, soundCheck, backings, backingDesk } =
    $derived(app);
  /** What is being opened, or null. */
  const opening = $derived(session.phase.kind === 'opening' ? session.phase.what : null);
  const playable = $derived(setup.timeline.ok && opening === null);

  const start = () => void session.start();
  const openTake = (id: TakeId) => void session.openTake(id);
  const removeTake = (id: TakeId) => void library.remove(id);
  const markTake = (id: TakeId, change: TakeMark) => void library.mark(id, change);

  function chooseForm(name: string | null) {
    if (name === null) setup.writeChart(setup.settings.ownChart || setup.chartText);
    else setup.chooseForm(name);
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`page`,});
   { svelteHTML.createElement("header", {});
     { const $$_ogoL2C = __sveltets_2_ensureComponent(Logo); new $$_ogoL2C({ target: __sveltets_2_any(), props: {}});}
     { svelteHTML.createElement("div", { "class":`page-settings`,});
       { const $$_skniLegaP3C = __sveltets_2_ensureComponent(PageLinks); new $$_skniLegaP3C({ target: __sveltets_2_any(), props: {  "pages":app.pages,}});}
       { const $$_eciohCegaugnaL3C = __sveltets_2_ensureComponent(LanguageChoice); new $$_eciohCegaugnaL3C({ target: __sveltets_2_any(), props: {   language,"onchoose":(code) => setup.setLanguage(code),}});}
       { const $$_eciohCemehT3C = __sveltets_2_ensureComponent(ThemeChoice); new $$_eciohCemehT3C({ target: __sveltets_2_any(), props: {}});}
     }
   }
   { svelteHTML.createElement("main", { "tabindex":-1,});
     { svelteHTML.createElement("div", { "class":`welcome`,});
       { svelteHTML.createElement("h1", {});words.ready.headline; }
       { svelteHTML.createElement("p", {});
        words.ready.about;
       }
       { svelteHTML.createElement("div", { "class":`start`,});
         { svelteHTML.createElement("div", { "class":`go`,});
           { const $$_nottuBnialP5C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP5C({ target: __sveltets_2_any(), props: {   children:() => { return __sveltets_2_any(0); },"strong":true,"disabled":!playable,"onclick":start,}});
            opening === null ? words.ready.start : describeOpening(opening, words);
           PlainButton}
         }
         { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":opening !== null,"onclick":() => void session.playDemo(),}});words.ready.demo;  PlainButton}
         { const $$_seliFnepO4C = __sveltets_2_ensureComponent(OpenFiles); new $$_seliFnepO4C({ target: __sveltets_2_any(), props: {    "disabled":!playable,"onfiles":onrecording,}});}
         { const $$_gnikcaBnepO4C = __sveltets_2_ensureComponent(OpenBacking); new $$_gnikcaBnepO4C({ target: __sveltets_2_any(), props: {     "disabled":opening !== null,"onfile":(file) => void backingDesk.openFile(file, setup.chartText),}});}
         { const $$_nottuBnialP4C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP4C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":opening !== null,"onclick":() => void soundCheck.open(),}});words.ready.soundCheck;  PlainButton}
       }
       { const $$_setoNyBtratS3C = __sveltets_2_ensureComponent(StartByNotes); new $$_setoNyBtratS3C({ target: __sveltets_2_any(), props: {           "signal":startSignal,"settings":setup.settings,"ready":playable,"onstart":start,"onoff":() => setup.setPlaying({ playedSignal: false }),}});}
       { svelteHTML.createElement("p", { "class":`reason`,});
        setup.settings.input === 'midi' ? words.ready.startWithMidi : words.ready.startWithMicrophone;
        words.ready.howItGoes;
       }
     }
     { svelteHTML.createElement("div", { "class":`list`,});
       { const $$_tsiLteS3C = __sveltets_2_ensureComponent(SetList); new $$_tsiLteS3C({ target: __sveltets_2_any(), props: {                  forms,"chosen":setup.settings.form,"onchoose":chooseForm,"kept":songbook.charts,"chosenKept":songbook.called(setup.ownTitle) ?? songbook.withText(setup.settings.ownChart),"onkept":(chart) => setup.writeChart(chart.chartText, chart.title),"backings":backings.kept,"standing":setup.backing?.record.id ?? null,"onbacking":(id) => backings.choose(id),}});}
     }
     { svelteHTML.createElement("div", { "class":`stand`,});
       { const $$_sekaT3C = __sveltets_2_ensureComponent(Takes); new $$_sekaT3C({ target: __sveltets_2_any(), props: {           "takes":[],"unfinished":library.unfinished,"onopen":openTake,"onremove":removeTake,"onmark":markTake,}});}
       { const $$_teehS3C = __sveltets_2_ensureComponent(Sheet); const $$_teehS3 = new $$_teehS3C({ target: __sveltets_2_any(), props: {          setup,forms,songbook,"onform":chooseForm,"backings":backings.kept,"onbacking":(id) => backings.choose(id),stand:() => { async ()/*Ωignore_positionΩ*/ => {
          if(setup.backing !== null){
            const { id } = setup.backing.record;
             { const $$_slortnoCgnikcaB0C = __sveltets_2_ensureComponent(BackingControls); new $$_slortnoCgnikcaB0C({ target: __sveltets_2_any(), props: {               "standing":setup.backing,"choruses":setup.settings.choruses,"onchoruses":(choruses) => setup.setChoruses(choruses),"onplay":(change) => void backings.play(id, change),"onedit":() => void backingDesk.openKept(id),"onremove":() => void backings.remove(id),"onband":() => setup.setBacking(null),}});}
          }
        };return __sveltets_2_any(0)},}});/*Ωignore_startΩ*/const {stand} = $$_teehS3.$$prop_def;/*Ωignore_endΩ*/
        
       Sheet}
       { const $$_sgnitteSreyalP3C = __sveltets_2_ensureComponent(PlayerSettings); new $$_sgnitteSreyalP3C({ target: __sveltets_2_any(), props: {     "settings":setup.settings,midi,"onchange":(change) => setup.setPlaying(change),}});}
      if(setup.backing === null){ { const $$_ecitcarP3C = __sveltets_2_ensureComponent(Practice); new $$_ecitcarP3C({ target: __sveltets_2_any(), props: { setup,}});}}
       { const $$_sleveLdnaB3C = __sveltets_2_ensureComponent(BandLevels); new $$_sleveLdnaB3C({ target: __sveltets_2_any(), props: {                 "levels":setup.settings.levels,"reference":setup.settings.reference,"swing":setup.swing,"countInBars":setup.settings.countInBars,"onswing":(swing) => setup.setSwing(swing),"oncountin":(bars) => setup.setCountIn(bars),"onreference":(reference) => setup.setReference(reference),"onlevel":(part, levelDb) => setup.setLevel(part, levelDb),}});}
       { const $$_sekaT3C = __sveltets_2_ensureComponent(Takes); new $$_sekaT3C({ target: __sveltets_2_any(), props: {           "takes":library.takes,"unfinished":[],"onopen":openTake,"onremove":removeTake,"onmark":markTake,}});}
     }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const ReadyScreen__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type ReadyScreen__SvelteComponent_ = ReturnType<typeof ReadyScreen__SvelteComponent_>;
/*Ωignore_endΩ*/export default ReadyScreen__SvelteComponent_;