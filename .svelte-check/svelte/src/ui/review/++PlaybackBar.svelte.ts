///<reference types="svelte" />
;
import PlainButton from '../parts/PlainButton.svelte';
import Segments from '../parts/Segments.svelte';
import { clockWords } from '../parts/sentences.ts';
import { mixes, speeds } from '../../state/playback.svelte.ts';
import type { PlaybackVerbs } from './playback-verbs.ts';
import { describeProblem } from '../../core/words/problem.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    playback: PlaybackVerbs;
    /** Bars of the form that are gone round, or null. */
    looped: { readonly fromBar: number; readonly toBar: number } | null;
    /** Goes round the bars of the chosen note, or no longer. */
    onloop: () => void;
    onkeys: () => void;
  };function $$render() {

  
  
  
  
  
  
  

  let { playback, looped, onloop, onkeys }: Props = $props();
  const words = useWords();
;
async () => {


 { svelteHTML.createElement("div", { "class":`playback`,});
   { svelteHTML.createElement("div", { "class":`row`,});
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => void playback.toggle(),}});
      playback.playing ? words.review.pause : words.review.hearTake;
     PlainButton}
     { svelteHTML.createElement("input", {                 "type":`range`,"min":`0`,"max":playback.durationSeconds,"step":`0.01`,"value":playback.seconds,"aria-label":words.review.placeInTake,"aria-valuetext":clockWords(playback.seconds),"oninput":(event) => void playback.seek(event.currentTarget.valueAsNumber),});}
     { svelteHTML.createElement("span", { "class":`time`,});clockWords(playback.seconds);  clockWords(playback.durationSeconds); }
   }
   { svelteHTML.createElement("div", { "class":`row`,});
     { const $$_stnemgeS2C = __sveltets_2_ensureComponent(Segments); new $$_stnemgeS2C({ target: __sveltets_2_any(), props: {         "name":words.review.speed,"value":playback.speed,"choices":speeds.map((speed) => [speed, words.review.speeds[speed]] as const),"onchoose":(speed) => void playback.setSpeed(speed),}});}
     { const $$_stnemgeS2C = __sveltets_2_ensureComponent(Segments); new $$_stnemgeS2C({ target: __sveltets_2_any(), props: {         "name":words.review.mix,"value":playback.mix,"choices":mixes.map((mix) => [mix, words.review.mixes[mix]] as const),"onchoose":(mix) => playback.setMix(mix),}});}
     { svelteHTML.createElement("button", {       "type":`button`,"class":`loop`,"aria-pressed":looped !== null,"onclick":onloop,});
      looped === null ? words.review.loop : words.review.looped(looped);
     }
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":onkeys,}});words.review.showKeys; PlainButton}
   }
  if(playback.problem !== null){ { svelteHTML.createElement("p", { "role":`alert`,});describeProblem(playback.problem, words); }}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const PlaybackBar__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type PlaybackBar__SvelteComponent_ = ReturnType<typeof PlaybackBar__SvelteComponent_>;
/*Ωignore_endΩ*/export default PlaybackBar__SvelteComponent_;