///<reference types="svelte" />
;
import Beats from './Beats.svelte';
import { keyWords } from '../parts/sentences.ts';
import Dials from './Dials.svelte';
import type { DialId, DialValues } from './dials.ts';
import MicrophoneLevel from './MicrophoneLevel.svelte';
import type { Moment, passAt } from './moment.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    beatsPerBar: number;
    moment: Moment | null;
    /** How many choruses the take will have; null until stopped. */
    choruses: number | null;
    /** Which time through the form it is, where that goes through keys. */
    pass: ReturnType<typeof passAt>;
    /** Whether the notes come as MIDI: there is no level to show then. */
    levelDb: (() => number | null) | null;
    /** null in the demo, where there is nothing to turn: it leads on to its review. */
    dials: DialValues | null;
    onturn: (id: DialId, value: number) => void;
    onstop: () => void;
  };function $$render() {

  
  
  
  
  
  
  

  let { beatsPerBar, moment, choruses, pass, levelDb, dials, onturn, onstop }: Props = $props();
  const words = useWords();

  const countingIn = $derived(moment === null || moment.countIn !== null);
  /** Key or tempo change while it goes on, and are told. */
  const changing = $derived(moment !== null && !countingIn && (moment.key ?? moment.bpm) !== null);
;
async () => {


 { svelteHTML.createElement("header", {});
   { const $$_staeB1C = __sveltets_2_ensureComponent(Beats); new $$_staeB1C({ target: __sveltets_2_any(), props: {   beatsPerBar,"beat":moment?.beatInBar ?? -1,}});}
   { svelteHTML.createElement("div", { "class":`facts`,});
    if(moment?.turn){
       { svelteHTML.createElement("p", { "class":`turn ${moment.turn.whose}`,});
         { svelteHTML.createElement("b", { "class":`whose`,});moment.turn.whose === 'player' ? words.playing.you : words.playing.theBand; }
        words.playing.turnFor;  { svelteHTML.createElement("b", {});moment.turn.barsLeft; }
       }
    }
     { svelteHTML.createElement("div", {  "class":`place chorus`,});changing;
       { svelteHTML.createElement("p", {});
        if(moment && !countingIn){
          words.playing.chorus;  { svelteHTML.createElement("b", {});(pass?.chorus ?? moment.chorus) + 1; }choruses === null
            ? ''
            : words.playing.ofChoruses({ choruses });
        }else{
          words.playing.countIn;
        }
       }
      if(moment && changing){
         { svelteHTML.createElement("p", { "class":`pace`,});
          if(moment.key !== null){words.playing.inKey;
             { svelteHTML.createElement("b", {});keyWords(moment.key, words); }if(pass !== null){words.playing.keyOf({
                key: pass.key,
                of: pass.of,
              });}}
          if(moment.bpm !== null){
             { svelteHTML.createElement("span", { "aria-hidden":`true`,});  } { svelteHTML.createElement("span", { "class":`only-heard`,});words.playing.tempo; }
             { svelteHTML.createElement("b", {});moment.bpm; }
          }
         }
      }
     }
    if(levelDb !== null){ { const $$_leveLenohporciM2C = __sveltets_2_ensureComponent(MicrophoneLevel); new $$_leveLenohporciM2C({ target: __sveltets_2_any(), props: { levelDb,}});}}
    if(dials === null){ { svelteHTML.createElement("p", { "class":`demo`,});words.playing.demo; }
    }else{ { svelteHTML.createElement("div", { "class":`dials`,}); { const $$_slaiD3C = __sveltets_2_ensureComponent(Dials); new $$_slaiD3C({ target: __sveltets_2_any(), props: {    "values":dials,countingIn,onturn,}});} }}
   }
   { svelteHTML.createElement("button", {    "class":`stop`,"onclick":onstop,});dials === null ? words.playing.toReview : words.playing.stop;  { svelteHTML.createElement("kbd", {});words.playing.stopKey; } }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Header__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Header__SvelteComponent_ = ReturnType<typeof Header__SvelteComponent_>;
/*Ωignore_endΩ*/export default Header__SvelteComponent_;