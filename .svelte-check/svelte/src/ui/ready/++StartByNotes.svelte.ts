///<reference types="svelte" />
;
import { untrack } from 'svelte';
import type { PlayingSettings } from '../../state/playing-settings.ts';
import type { StartSignal } from '../../state/start-signal.svelte.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { describeProblem } from '../../core/words/problem.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    signal: StartSignal;
    settings: Pick<PlayingSettings, 'playedSignal' | 'instrument' | 'input'>;
    /** Whether a take could start now. */
    ready: boolean;
    onstart: () => void;
    onoff: () => void;
  };function $$render() {

  
  
  
  
  
  

  let { signal, settings, ready, onstart, onoff }: Props = $props();
  const words = useWords();

  let hidden = $state(document.hidden);
  /** Counts touches of the page while the listening was asleep. Each one makes it try again. */
  let touches = $state(0);

  const wanted = $derived(settings.playedSignal && ready && !hidden);
  const instrument = $derived(settings.instrument);
  const input = $derived(settings.input);

  $effect(() => {
    void touches;
    const asked = { instrument, input };
    if (!wanted) return;
    untrack(() => void signal.listen(asked, onstart));
    return () => signal.halt();
  });

  function touch() {
    if (signal.status === 'asleep') touches += 1;
  }

  const told = $derived.by(() => {
    switch (signal.status) {
      case 'listening':
        return words.ready.startByNotes.listening;
      case 'closed':
        return words.ready.startByNotes.closed({ input });
      case 'asleep':
        return words.ready.startByNotes.asleep;
      case 'failed':
        return signal.problem === null ? '' : describeProblem(signal.problem, words);
      case 'off':
        return '';
    }
  });
;
async () => {


 { svelteHTML.createElement("svelte:document", {  "onvisibilitychange":() => (hidden = document.hidden),});}
 { svelteHTML.createElement("svelte:window", {    "onpointerdown":touch,"onkeydown":touch,});}

if(settings.playedSignal){
   { svelteHTML.createElement("div", {   "class":`ear`,"role":`status`,});
    if(told !== ''){
       { svelteHTML.createElement("svg", {     "viewBox":`0 0 32 20`,"aria-hidden":`true`,});signal.status === 'listening';
         { svelteHTML.createElement("path", {  "d":`M1 15H31`,});}
         { svelteHTML.createElement("circle", {      "cx":`7`,"cy":`15`,"r":`3.5`,});}
         { svelteHTML.createElement("circle", {      "cx":`16`,"cy":`15`,"r":`3.5`,});}
         { svelteHTML.createElement("circle", {      "cx":`25`,"cy":`15`,"r":`3.5`,});}
       }
       { svelteHTML.createElement("p", {});told; }
      if(signal.status === 'listening'){ { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },"onclick":onoff,}});words.ready.startByNotes.stop;  PlainButton}}
    }
   }
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const StartByNotes__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type StartByNotes__SvelteComponent_ = ReturnType<typeof StartByNotes__SvelteComponent_>;
/*Ωignore_endΩ*/export default StartByNotes__SvelteComponent_;