///<reference types="svelte" />
;
import ChordSymbol from './ChordSymbol.svelte';
import LandingMark from './LandingMark.svelte';
import RoleMark from './RoleMark.svelte';
import { chordWidth } from './engrave.ts';
import { landingSentence } from './sentences.ts';
import type { LandingsHere, SheetBar, SheetCell } from './sheet.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    bar: SheetBar;
    landings: readonly LandingsHere[];
    /** How many earlier choruses are kept in sight below the shore. */
    memory: number;
    /** The player sits this bar out. */
    tacet?: boolean;
    /** Slashes, one a beat, as a sheet has them before anything is played. */
    slashes: boolean;
    /** Of the landing that has just happened, or -1. */
    freshIndex: number;
    last: boolean;
    onlanding?: ((index: number) => void) | undefined;
  };function $$render() {

  
  
  
  
  
  
  

  let { bar, landings, memory, tacet = false, slashes, freshIndex, last, onlanding }: Props = $props();
  const words = useWords();

  /** Hundredths of the bar's width that one em of the name may take. */
  const roomFor = (cell: SheetCell) =>
    (100 * cell.beats) / bar.beats / (chordWidth(cell.symbol ?? 'N.C.') + 0.4);
  const percent = (beat: number) => `${(100 * beat) / bar.beats}%`;
;
async () => {


 { svelteHTML.createElement("li", {    "class":`bar`,...__sveltets_2_empty({"data-bar":bar.index}),});last;tacet;
   { svelteHTML.createElement("span", {  "class":`only-heard`,});tacet ? words.parts.bandBar({ bar: bar.index + 1 }) : words.parts.bar({ bar: bar.index + 1 }); }
   { svelteHTML.createElement("div", { "class":`names`,});
       for(let cell of __sveltets_2_ensureArray(bar.cells)){cell.startBeat;
       { svelteHTML.createElement("span", {   "class":`name`,});__sveltets_2_ensureType(String, Number, percent(cell.startBeat));__sveltets_2_ensureType(String, Number, roomFor(cell));
        if(cell.goesOn){
           { svelteHTML.createElement("span", { "class":`only-heard`,});words.parts.goesOn; }
        }else{
           { const $$_lobmySdrohC3C = __sveltets_2_ensureComponent(ChordSymbol); new $$_lobmySdrohC3C({ target: __sveltets_2_any(), props: {  "symbol":cell.symbol ?? 'N.C.',}});}
        }
       }
    }
   }
   { svelteHTML.createElement("div", { "class":`staff`,});
     { svelteHTML.createElement("span", { "class":`played`,}); }
    if(slashes && !tacet){
       { svelteHTML.createElement("span", {   "class":`slashes`,"aria-hidden":`true`,});
           for(let $$each_item of __sveltets_2_ensureArray({ length: bar.beats })){$$each_item;let beat = 1;beat; { svelteHTML.createElement("span", { "class":`slash`,}); }}
       }
    }
       for(let here of __sveltets_2_ensureArray(landings)){here.beatInBar;
      const latest = here.landings.at(-1);
      if(latest){
         { svelteHTML.createElement("span", {   "class":`spot`,});__sveltets_2_ensureType(String, Number, percent(here.beatInBar));__sveltets_2_ensureType(String, Number, bar.cells.length);
          if(onlanding){
             { svelteHTML.createElement("button", {     "onclick":() => onlanding(latest.index),"aria-label":landingSentence(latest.landing, words),});
               { const $$_kraMgnidnaL4C = __sveltets_2_ensureComponent(LandingMark); new $$_kraMgnidnaL4C({ target: __sveltets_2_any(), props: {  "landing":latest.landing,}});}
             }
          }else{
             { svelteHTML.createElement("span", { "class":`only-heard`,});landingSentence(latest.landing, words); }
            latest.index; { { const $$_kraMgnidnaL3C = __sveltets_2_ensureComponent(LandingMark); new $$_kraMgnidnaL3C({ target: __sveltets_2_any(), props: {     "landing":latest.landing,"fresh":latest.index === freshIndex,}});}}
          }
         }
         { svelteHTML.createElement("span", {  "class":`memory`,});__sveltets_2_ensureType(String, Number, percent(here.beatInBar));
             for(let past of __sveltets_2_ensureArray((here.landings.slice(0, -1).slice(-memory)))){past.chorus;
            if(onlanding){
               { svelteHTML.createElement("button", {    "onclick":() => onlanding(past.index),"aria-label":words.parts.earlierLanding({
                  chorus: past.chorus + 1,
                  landing: landingSentence(past.landing, words),
                }),}); { const $$_kraMeloR4C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR4C({ target: __sveltets_2_any(), props: {    "role":past.landing.role,"size":`0.5em`,}});} }
            }else{
               { const $$_kraMeloR3C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR3C({ target: __sveltets_2_any(), props: {    "role":past.landing.role,"size":`0.5em`,}});}
            }
          }
         }
      }
    }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const SheetBar__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type SheetBar__SvelteComponent_ = ReturnType<typeof SheetBar__SvelteComponent_>;
/*Ωignore_endΩ*/export default SheetBar__SvelteComponent_;