///<reference types="svelte" />
;
import { SET_DELAY_LIMITS_SECONDS } from '../../core/take/round-trip.ts';
import type { SoundCheck } from '../../state/sound-check.svelte.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
import { describeDelay } from './describe-measurements.ts';
;

  interface Props {
    check: SoundCheck;
    /** Whether nothing can be measured now. */
    busy: boolean;
  };function $$render() {

  
  
  
  
  

  let { check, busy }: Props = $props();
  const words = useWords();

  const leastMs = 1000 * SET_DELAY_LIMITS_SECONDS.least;
  const mostMs = 1000 * SET_DELAY_LIMITS_SECONDS.most;
  const room = $derived(check.room);
  const delay = $derived(check.delay);
  const ms = $derived(delay === null ? null : Math.round(1000 * delay.seconds));
  /** Sweeps that nothing came back of: the strokes are the way on. */
  const isUnheard = $derived(
    room !== null && room.isSwept && room.path === null && room.delaySeconds === null,
  );
  const comesBack = $derived(room !== null && room.path !== null);
  let refused = $state(false);

  function set(field: HTMLInputElement) {
    refused = !field.checkValidity() || field.value === '';
    if (!refused) check.setDelay(field.valueAsNumber / 1000);
  }
;
async () => {


 { svelteHTML.createElement("section", { "aria-labelledby":`delay`,});
   { svelteHTML.createElement("h2", { "id":`delay`,});words.soundCheck.delayTitle; }
   { svelteHTML.createElement("p", { "role":`status`,});delay === null ? '' : describeDelay(room, delay, words); }
   { svelteHTML.createElement("p", { "id":`strokes`,});
    comesBack ? words.soundCheck.strokesNotForSpeakers : words.soundCheck.strokesTask;
   }
   { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: {         children:() => { return __sveltets_2_any(0); },"strong":isUnheard,"disabled":busy,"aria-describedby":`strokes`,"onclick":() => void check.strike(),}});
    check.step === 'striking' ? words.soundCheck.striking : words.soundCheck.strike;
   PlainButton}
   { svelteHTML.createElement("p", { "class":`set`,});
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.soundCheck.delayField; }
       { svelteHTML.createElement("input", {                   "type":`number`,"min":leastMs,"max":mostMs,"step":`1`,"value":ms,"disabled":delay === null,"aria-invalid":refused,"aria-describedby":`limits`,"onchange":({ currentTarget }) => set(currentTarget),});}
     }
    if(room !== null && room.setSeconds !== null){
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => check.setDelay(null),}});
        room.delaySeconds === null ? words.soundCheck.takeAssumed : words.soundCheck.takeMeasured;
       PlainButton}
    }
   }
   { svelteHTML.createElement("p", {  "id":`limits`,});refused;
    words.soundCheck.delayLimits({ least: leastMs, most: mostMs });
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Delay__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Delay__SvelteComponent_ = ReturnType<typeof Delay__SvelteComponent_>;
/*Ωignore_endΩ*/export default Delay__SvelteComponent_;