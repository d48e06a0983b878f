///<reference types="svelte" />
;
import type { Timeline } from '../../core/chart/timeline.ts';
import type { Landing } from '../../core/take/schema.ts';
import type { PlayingSettings } from '../../state/playing-settings.ts';
import type { LiveAim } from '../../state/live-state.svelte.ts';
import type { LiveMoment, LiveNote } from '../../state/session.svelte.ts';
import InstrumentView from '../instrument/InstrumentView.svelte';
import { viewOf } from '../instrument/views.ts';
import AimInHand from './AimInHand.svelte';
import LiveLine from './LiveLine.svelte';
import NoteNow from './NoteNow.svelte';
import type { Moment } from './moment.ts';
import NextChord from './NextChord.svelte';
import ChordNow from './ChordNow.svelte';
import BandTurn from './BandTurn.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    timeline: Timeline;
    live: () => LiveMoment | null;
    moment: Moment | null;
    note: LiveNote | null;
    sounding: boolean;
    latest: Landing | null;
    aim: LiveAim | null;
    settings: PlayingSettings;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  
  
  
  
  

  let { timeline, live, moment, note, sounding, latest, aim, settings }: Props = $props();
  const words = useWords();

  /** In the band's turn the microphone hears the band's example, and nothing that the player plays. */
  const listening = $derived(moment?.turn?.whose === 'band');
  /** The example that the band plays does not move the player's hand on the instrument. */
  const onNeck = () => {
    const now = live();
    return listening && now !== null ? { ...now, note: null } : now;
  };
  const placed = $derived(viewOf(settings.view) !== null);
;
async () => {


 { svelteHTML.createElement("section", {    "class":`stage`,"aria-label":words.playing.chords,});placed;listening;
  if(aim !== null){
     { svelteHTML.createElement("div", { "class":`aim`,}); { const $$_dnaHnImiA2C = __sveltets_2_ensureComponent(AimInHand); new $$_dnaHnImiA2C({ target: __sveltets_2_any(), props: {   aim,"now":listening ? [] : (moment?.aimNow ?? []),}});} }
  }
   { svelteHTML.createElement("div", { "class":`now`,}); { const $$_woNdrohC2C = __sveltets_2_ensureComponent(ChordNow); new $$_woNdrohC2C({ target: __sveltets_2_any(), props: { moment,}});} }
   { svelteHTML.createElement("div", { "class":`line`,});
    if(listening && moment?.turn){ { const $$_nruTdnaB2C = __sveltets_2_ensureComponent(BandTurn); new $$_nruTdnaB2C({ target: __sveltets_2_any(), props: {  "turn":moment.turn,}});}}
     { const $$_eniLeviL2C = __sveltets_2_ensureComponent(LiveLine); new $$_eniLeviL2C({ target: __sveltets_2_any(), props: {       live,"beatsPerBar":timeline.beatsPerBar,"landing":latest,"quiet":settings.quiet,}});}
   }
   { svelteHTML.createElement("div", { "class":`next`,});
     { const $$_drohCtxeN2C = __sveltets_2_ensureComponent(NextChord); new $$_drohCtxeN2C({ target: __sveltets_2_any(), props: {         "chord":moment?.next ?? null,"beats":moment?.beatsToNext ?? null,"targets":moment?.targets ?? [],"aimed":moment?.targetsAreAim ?? false,}});}
   }
  if(!settings.quiet){
     { svelteHTML.createElement("div", { "class":`note`,}); { const $$_woNetoN2C = __sveltets_2_ensureComponent(NoteNow); new $$_woNetoN2C({ target: __sveltets_2_any(), props: {  note,sounding,}});} }
  }
  if(placed){ { svelteHTML.createElement("div", { "class":`instrument`,}); { const $$_weiVtnemurtsnI2C = __sveltets_2_ensureComponent(InstrumentView); new $$_weiVtnemurtsnI2C({ target: __sveltets_2_any(), props: {    "live":onNeck,timeline,settings,}});} }}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Stage__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Stage__SvelteComponent_ = ReturnType<typeof Stage__SvelteComponent_>;
/*Ωignore_endΩ*/export default Stage__SvelteComponent_;