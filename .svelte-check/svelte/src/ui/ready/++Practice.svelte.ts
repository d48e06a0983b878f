///<reference types="svelte" />
;
import { playedBars } from '../../core/chart/play-order.ts';
import type { KeyCycle } from '../../core/chart/practice-chart.ts';
import type { DroneTones } from '../../core/band/settings.ts';
import { KEY_COUNTS, RISE_RANGE, TRADES } from '../../state/practice-settings.ts';
import { practiceWords, sameBarsEachTime } from './practice-summary.ts';
import type { Setup } from '../../state/setup.svelte.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    setup: Setup;
  };function $$render() {

  
  
  
  
  
  
  

  let { setup }: Props = $props();
  const words = useWords();

  /** New random keys each time they are asked for; any whole number does. */
  const SEEDS = 1_000_000;
  const keyCycles: readonly KeyCycle[] = ['fourths', 'half steps', 'random'];

  const practice = $derived(setup.settings.practice);
  const bars = $derived(setup.chart.ok ? playedBars(setup.chart.value).length : 0);
  const numbers = $derived(Array.from({ length: bars }, (_, i) => i + 1));
  const from = $derived(Math.min(practice.loop?.fromBar ?? 1, bars));
  const to = $derived(Math.min(practice.loop?.toBar ?? bars, bars));
  const inUse = $derived(practiceWords(practice, bars, words));

  const drones: readonly DroneTones[] = ['root', 'root and fifth'];
  const rises = [1, 2, 4];
  const sameBars = $derived(sameBarsEachTime(practice.tradeBars, to - from + 1));

  function rise(byBpm: number, everyChoruses: number) {
    const within = Math.min(RISE_RANGE.highest, Math.max(0, Math.round(byBpm) || 0));
    setup.setPractice({ rise: within === 0 ? null : { byBpm: within, everyChoruses } });
  }

  function loop(fromBar: number, toBar: number) {
    const whole = fromBar === 1 && toBar === bars;
    setup.setPractice({ loop: whole ? null : { fromBar, toBar: Math.max(fromBar, toBar) } });
  }

  function chooseKeys(value: string) {
    const keys = keyCycles.find((name) => name === value) ?? null;
    setup.setPractice({ keys, ...(keys === 'random' ? { seed: Math.floor(Math.random() * SEEDS) } : {}) });
  }
;
async () => {


 { svelteHTML.createElement("details", {});
   { svelteHTML.createElement("summary", { });inUse.length === 0
      ? words.ready.practice.closed
      : words.ready.practice.inUse({ parts: inUse }); }
   { svelteHTML.createElement("div", { "class":`ways`,});
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.ready.practice.fromBar; }
       { svelteHTML.createElement("select", {   "value":from,"onchange":(event) => loop(Number(event.currentTarget.value), to),});
           for(let number of __sveltets_2_ensureArray(numbers)){number; { svelteHTML.createElement("option", { "value":number,});number; }}
       }
     }
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.ready.practice.toBar; }
       { svelteHTML.createElement("select", {     "value":to,"onchange":(event) =>
          loop(Math.min(from, Number(event.currentTarget.value)), Number(event.currentTarget.value)),});
           for(let number of __sveltets_2_ensureArray(numbers)){number; { svelteHTML.createElement("option", { "value":number,});number; }}
       }
     }
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.ready.practice.keys; }
       { svelteHTML.createElement("select", {   "value":practice.keys ?? '',"onchange":(event) => chooseKeys(event.currentTarget.value),});
         { svelteHTML.createElement("option", {"value":"",});words.ready.practice.oneKey; }
           for(let name of __sveltets_2_ensureArray(keyCycles)){name; { svelteHTML.createElement("option", { "value":name,});words.ready.practice.cycles[name]; }}
       }
     }
    if(practice.keys !== null){ { svelteHTML.createElement("label", {});
         { svelteHTML.createElement("span", {});words.ready.practice.keyCount; }
         { svelteHTML.createElement("select", {     "value":practice.keyCount,"onchange":(event) => setup.setPractice({ keyCount: Number(event.currentTarget.value) }),});
             for(let count of __sveltets_2_ensureArray(KEY_COUNTS)){count; { svelteHTML.createElement("option", { "value":count,});count; }}
         }
       }}
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.ready.practice.faster; }
       { svelteHTML.createElement("input", {             "type":`number`,"min":`0`,"max":RISE_RANGE.highest,"step":`1`,"value":practice.rise?.byBpm ?? 0,"onchange":(event) => rise(event.currentTarget.valueAsNumber, practice.rise?.everyChoruses ?? 1),});}
     }
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.ready.practice.every; }
       { svelteHTML.createElement("select", {       "value":practice.rise?.everyChoruses ?? 1,"disabled":practice.rise === null,"onchange":(event) => rise(practice.rise?.byBpm ?? 0, Number(event.currentTarget.value)),});
           for(let count of __sveltets_2_ensureArray(rises)){count; { svelteHTML.createElement("option", {  "value":count,});words.ready.practice.chorusCount({ count }); }}
       }
     }
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.ready.practice.turns; }
       { svelteHTML.createElement("select", {     "value":practice.tradeBars ?? '',"onchange":(event) => setup.setPractice({ tradeBars: Number(event.currentTarget.value) || null }),});
         { svelteHTML.createElement("option", {"value":"",});words.ready.practice.noTurns; }
           for(let count of __sveltets_2_ensureArray(TRADES)){count;
           { svelteHTML.createElement("option", { "value":count,});words.ready.practice.turnsOf({ bars: count }); }
        }
       }
     }
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.ready.practice.over; }
       { svelteHTML.createElement("select", {     "value":practice.drone ?? '',"onchange":(event) => {
          const chosen = event.currentTarget.value;
          setup.setPractice({ drone: drones.find((tones) => tones === chosen) ?? null });
        },});
         { svelteHTML.createElement("option", {"value":"",});words.ready.practice.band; }
           for(let tones of __sveltets_2_ensureArray(drones)){tones; { svelteHTML.createElement("option", { "value":tones,});words.ready.practice.drones[tones]; }}
       }
     }
     { svelteHTML.createElement("label", { "class":`tick`,});
       { svelteHTML.createElement("input", {         "type":`checkbox`,"disabled":practice.drone !== null,"checked":practice.chordsRest,"onchange":(event) => setup.setPractice({ chordsRest: event.currentTarget.checked }),});}
      words.ready.practice.chordsRest;
     }
     { svelteHTML.createElement("label", { "class":`tick`,});
       { svelteHTML.createElement("input", {       "type":`checkbox`,"checked":practice.backbeatClick,"onchange":(event) => setup.setPractice({ backbeatClick: event.currentTarget.checked }),});}
      words.ready.practice.click;
     }
    if(practice.tradeBars !== null){
       { svelteHTML.createElement("p", {});
        words.ready.practice.turnsNote;
        if(sameBars){words.ready.practice.sameBars;}
       }
    }
    if(practice.drone !== null){
       { svelteHTML.createElement("p", {});words.ready.practice.droneNote; }
    }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Practice__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Practice__SvelteComponent_ = ReturnType<typeof Practice__SvelteComponent_>;
/*Ωignore_endΩ*/export default Practice__SvelteComponent_;