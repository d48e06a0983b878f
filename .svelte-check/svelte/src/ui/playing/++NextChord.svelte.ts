///<reference types="svelte" />
;
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import type { Chord } from '../../core/music/chord.ts';
import ChordSymbol from '../parts/ChordSymbol.svelte';
import { chordWidth, withSigns } from '../parts/engrave.ts';
import RoleMark from '../parts/RoleMark.svelte';
import { noteWords } from '../parts/sentences.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    /** null: nothing changes any more. */
    chord: Chord | null;
    /** Whole beats until it arrives. */
    beats: number | null;
    targets: readonly TargetTone[];
    /** Whether the aim in hand asks for these tones here: then they stand on the shore. */
    aimed: boolean;
  };function $$render() {

  
  
  
  
  
  
  

  let { chord, beats, targets, aimed }: Props = $props();
  const words = useWords();
;
async () => {


 { svelteHTML.createElement("div", { "class":`coming`,});
  if(chord !== null){
     { svelteHTML.createElement("p", { "class":`head`,});
       { svelteHTML.createElement("span", { "class":`only-heard`,});words.playing.next; }
       { svelteHTML.createElement("span", {  "class":`symbol`,});__sveltets_2_ensureType(String, Number, chordWidth(chord.symbol)); { const $$_lobmySdrohC3C = __sveltets_2_ensureComponent(ChordSymbol); new $$_lobmySdrohC3C({ target: __sveltets_2_any(), props: {  "symbol":chord.symbol,}});} }
       { svelteHTML.createElement("span", {    "class":`when`,"aria-hidden":`true`,});words.playing.inBeats;  { svelteHTML.createElement("b", {});beats; }
        words.playing.beats({ beats: beats ?? 0 }); }
     }
     { svelteHTML.createElement("ul", {    "class":`targets`,"aria-label":words.playing.tonesToLandOn,});targets.length > 2;aimed;
         for(let tone of __sveltets_2_ensureArray(targets)){tone.degree;
         { svelteHTML.createElement("li", {});
           { const $$_kraMeloR3C = __sveltets_2_ensureComponent(RoleMark); new $$_kraMeloR3C({ target: __sveltets_2_any(), props: {      "role":tone.role,"size":`0.8em`,"label":words.music.roles[tone.role],}});}
           { svelteHTML.createElement("span", { "class":`degree`,});withSigns(tone.degree); }
           { svelteHTML.createElement("span", { "class":`name`,});noteWords(tone.name, words); }
         }
      }
     }
  }else{
     { svelteHTML.createElement("p", { "class":`when`,});words.playing.stays; }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const NextChord__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type NextChord__SvelteComponent_ = ReturnType<typeof NextChord__SvelteComponent_>;
/*Ωignore_endΩ*/export default NextChord__SvelteComponent_;