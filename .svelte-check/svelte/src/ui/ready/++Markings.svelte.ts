///<reference types="svelte" />
;
import { feelNames, type FeelName } from '../../core/chart/feel-names.ts';
import { BPM_RANGE } from '../../state/settings.ts';
import { keyOn, parseKey, writeKey } from '../../core/music/keys.ts';
import PlainButton from '../parts/PlainButton.svelte';
import TapTempo from '../parts/TapTempo.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    feel: FeelName;
    bpm: number;
    musicKey: string;
    keys: readonly string[];
    /** How a key is named for the player. */
    keyName: (key: string) => string;
    /** Left out where it does not matter. */
    choruses?: number | null;
    onfeel: (feel: FeelName) => void;
    onbpm: (bpm: number) => void;
    onkey: (key: string) => void;
    onchoruses?: (choruses: number | null) => void;
  };function $$render() {

  
  
  
  
  
  

  let { feel, bpm, musicKey, keys, keyName, choruses, onfeel, onbpm, onkey, onchoruses }: Props = $props();
  const words = useWords();

  const lengths = [1, 2, 3, 4, 6, 8, 12];
  const allKeys = $derived(keys.includes(musicKey) ? keys : [musicKey, ...keys]);

  /** Signs that are read the same in every language. */
  const HALF_STEPS = { down: '−½', up: '+½' };

  function transpose(semitones: number) {
    const now = parseKey(musicKey);
    if (now !== null) onkey(writeKey(keyOn((now.tonicPitchClass + semitones + 12) % 12, now.mode)));
  }

  function writeTempo(event: Event & { currentTarget: HTMLInputElement }) {
    const wanted = event.currentTarget.valueAsNumber;
    if (wanted >= BPM_RANGE.lowest && wanted <= BPM_RANGE.highest) onbpm(wanted);
    else event.currentTarget.value = String(bpm);
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`markings`,});
   { svelteHTML.createElement("label", {});
     { svelteHTML.createElement("span", {});words.ready.feel; }
     { svelteHTML.createElement("select", {   "value":feel,"onchange":(event) => onfeel(event.currentTarget.value as FeelName),});
         for(let name of __sveltets_2_ensureArray(feelNames)){name; { svelteHTML.createElement("option", { "value":name,});words.ready.feels[name]; }}
     }
   }
   { svelteHTML.createElement("label", {});
     { svelteHTML.createElement("span", {});words.ready.tempo; }
     { svelteHTML.createElement("span", { "class":`tempo`,});
       { svelteHTML.createElement("span", { "aria-hidden":`true`,});  }
       { svelteHTML.createElement("input", {               "type":`number`,"inputmode":`numeric`,"min":BPM_RANGE.lowest,"max":BPM_RANGE.highest,"step":`any`,"value":bpm,"onchange":writeTempo,});}
     }
   }
   { svelteHTML.createElement("span", { "class":`tap`,}); { const $$_opmeTpaT2C = __sveltets_2_ensureComponent(TapTempo); new $$_opmeTpaT2C({ target: __sveltets_2_any(), props: { onbpm,}});} }
   { svelteHTML.createElement("div", { "class":`key`,});
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.ready.key; }
       { svelteHTML.createElement("select", {   "value":musicKey,"onchange":(event) => onkey(event.currentTarget.value),});
           for(let name of __sveltets_2_ensureArray(allKeys)){name; { svelteHTML.createElement("option", { "value":name,});keyName(name); }}
       }
     }
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"aria-label":words.ready.halfStepDown,"onclick":() => transpose(-1),}});HALF_STEPS.down;  PlainButton}
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {   children:() => { return __sveltets_2_any(0); },"aria-label":words.ready.halfStepUp,"onclick":() => transpose(1),}});HALF_STEPS.up;  PlainButton}
   }
  if(onchoruses){ { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.ready.choruses; }
       { svelteHTML.createElement("select", {     "value":String(choruses ?? ''),"onchange":(event) =>
          onchoruses(event.currentTarget.value === '' ? null : Number(event.currentTarget.value)),});
           for(let length of __sveltets_2_ensureArray(lengths)){length; { svelteHTML.createElement("option", { "value":String(length),});length; }}
         { svelteHTML.createElement("option", {"value":"",});words.ready.untilStopped; }
       }
     }}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Markings__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Markings__SvelteComponent_ = ReturnType<typeof Markings__SvelteComponent_>;
/*Ωignore_endΩ*/export default Markings__SvelteComponent_;