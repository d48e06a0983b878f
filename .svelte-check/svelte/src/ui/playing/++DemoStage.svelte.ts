///<reference types="svelte" />
;
import { onMount } from 'svelte';
import type { Timeline } from '../../core/chart/timeline.ts';
import { LiveState } from '../../state/live-state.svelte.ts';
import { performTake } from '../../state/perform-take.ts';
import type { Session } from '../../state/session.svelte.ts';
import type { Setup } from '../../state/setup.svelte.ts';
import PlayingScreen from './PlayingScreen.svelte';
;

  interface Props {
    /** With the demo in review. */
    session: Session;
    /** As the player reads it. */
    timeline: Timeline;
    setup: Setup;
    onend: () => void;
  };function $$render() {

  
  
  
  
  
  
  

  let { session, timeline, setup, onend }: Props = $props();

  const live = new LiveState();

  function end() {
    session.playback?.pause();
    void session.playback?.seek(0);
    onend();
  }

  onMount(() => {
    const { phase, playback } = session;
    if (phase.kind !== 'review' || playback === null) return undefined;
    const { review } = phase;
    const frames = { each: eachDrawnFrame };
    return performTake({ review, playback, live, settings: setup.settings, frames, onEnd: end });
  });

  function eachDrawnFrame(draw: () => void): () => void {
    let next = requestAnimationFrame(function frame() {
      next = requestAnimationFrame(frame);
      draw();
    });
    return () => cancelAnimationFrame(next);
  }

  /** The keys that end a take end the demo; no other screen gets them. */
  function keydown(event: KeyboardEvent) {
    if (event.ctrlKey || event.metaKey || event.altKey || !['Escape', ' ', 'Enter'].includes(event.key))
      return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (!event.repeat) end();
  }
;
async () => {


 { svelteHTML.createElement("svelte:window", {  "onkeydowncapture":keydown,});}

 { const $$_neercSgniyalP0C = __sveltets_2_ensureComponent(PlayingScreen); new $$_neercSgniyalP0C({ target: __sveltets_2_any(), props: {                    timeline,"live":() => live.now,"landings":live.landings,"aim":live.aim,"choruses":null,"settings":setup.settings,"occasion":`demo`,"dials":null,"onturn":() => undefined,"onstop":end,}});}
};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const DemoStage__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type DemoStage__SvelteComponent_ = ReturnType<typeof DemoStage__SvelteComponent_>;
/*Ωignore_endΩ*/export default DemoStage__SvelteComponent_;