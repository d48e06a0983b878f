///<reference types="svelte" />
;
import type { BandPart } from '../../core/band/events.ts';
import type { BandLevels } from '../../state/ports.ts';
import { MOST_COUNT_IN_BARS, SWING_RANGE } from '../../state/settings.ts';
import Choice from '../parts/Choice.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    levels: BandLevels;
    /** A4 in Hz, or found from the playing. */
    reference: number | 'auto';
    /** Share of the beat that the first eighth takes. */
    swing: number;
    countInBars: number;
    onswing: (swing: number) => void;
    oncountin: (bars: number) => void;
    onlevel: (part: BandPart | 'all', levelDb: number) => void;
    onreference: (reference: number | 'auto') => void;
  };function $$render() {
 const fader/*Ωignore_positionΩ*/ = (part: BandPart | 'all', name: string, highest: number)/*Ωignore_startΩ*/: ReturnType<import('svelte').Snippet>/*Ωignore_endΩ*/ => { async ()/*Ωignore_positionΩ*/ => {
   { svelteHTML.createElement("label", {});
     { svelteHTML.createElement("span", {});name; }
     { svelteHTML.createElement("input", {               "type":`range`,"min":`-60`,"max":highest,"step":`1`,"value":levels[part],"aria-valuetext":levels[part] <= -60
        ? words.ready.sound.silent
        : words.ready.sound.decibels({ level: levels[part] }),"oninput":(event) => onlevel(part, event.currentTarget.valueAsNumber),});}
     { svelteHTML.createElement("output", { "aria-hidden":`true`,});numeral(levels[part]); }
   }
};return __sveltets_2_any(0)};
  
  
  
  
  

  let { levels, reference, swing, countInBars, onswing, oncountin, onlevel, onreference }: Props = $props();
  const words = useWords();

  const parts = ['drums', 'bass', 'chords', 'line', 'click'] as const;

  /** The number beside a fader; its name and unit are read out in words. */
  const numeral = (levelDb: number) => `${String(levelDb).replace('-', '−')} dB`;

  /** Early music, some orchestras, the standard (ISO 16), other orchestras; and what was kept. */
  const usual = [415, 432, 440, 441, 442, 443];
  const pitches = $derived(
    reference === 'auto' || usual.includes(reference) ? usual : [...usual, reference].sort((a, b) => a - b),
  );
;
async () => {




 { svelteHTML.createElement("div", { "class":`sound`,});
  ;__sveltets_2_ensureSnippet(fader('all', words.ready.sound.band, 0));
   { svelteHTML.createElement("p", {});
    words.ready.sound.care;
   }
   { svelteHTML.createElement("details", {});
     { svelteHTML.createElement("summary", {});words.ready.sound.more; }
     { svelteHTML.createElement("div", { "class":`faders`,});
         for(let part of __sveltets_2_ensureArray(parts)){part;;__sveltets_2_ensureSnippet(fader(part, words.ready.sound.parts[part], 6));}
       { svelteHTML.createElement("label", {});
         { svelteHTML.createElement("span", {});words.ready.sound.swing; }
         { svelteHTML.createElement("input", {               "type":`range`,"min":SWING_RANGE.lowest,"max":SWING_RANGE.highest,"step":`0.01`,"value":swing,"aria-valuetext":swing <= SWING_RANGE.lowest
            ? words.ready.sound.straight
            : words.ready.sound.swingShare({ percent: Math.round(100 * swing) }),"oninput":(event) => onswing(event.currentTarget.valueAsNumber),});}
         { svelteHTML.createElement("output", { "aria-hidden":`true`,});Math.round(100 * swing);  }
       }
     }
     { svelteHTML.createElement("div", { "class":`choices`,});
       { const $$_eciohC3C = __sveltets_2_ensureComponent(Choice); new $$_eciohC3C({ target: __sveltets_2_any(), props: {         "name":words.ready.sound.countIn,"value":String(countInBars),"choices":Array.from({ length: MOST_COUNT_IN_BARS }, (_, i) => [
          String(i + 1),
          words.ready.sound.bars({ bars: i + 1 }),
        ]),"onchoose":(bars) => oncountin(Number(bars)),}});}
       { const $$_eciohC3C = __sveltets_2_ensureComponent(Choice); new $$_eciohC3C({ target: __sveltets_2_any(), props: {         "name":words.ready.sound.tunedTo,"value":String(reference),"choices":[
          ['auto', words.ready.sound.asPlayed],
          ...pitches.map((hz) => [String(hz), words.ready.sound.reference({ hz })] as const),
        ],"onchoose":(value) => onreference(value === 'auto' ? value : Number(value)),}});}
     }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const BandLevels__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type BandLevels__SvelteComponent_ = ReturnType<typeof BandLevels__SvelteComponent_>;
/*Ωignore_endΩ*/export default BandLevels__SvelteComponent_;