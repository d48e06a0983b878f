///<reference types="svelte" />
;
import type { ChordSpan } from '../../core/chart/timeline.ts';
import { withSigns } from '../parts/engrave.ts';
import { noteWords } from '../parts/sentences.ts';
import { cssColour, ROLE_MARKS } from '../parts/roles.ts';
import {
    penPaths,
    shoresOf,
    heightOf,
    xOf,
    type Gap,
    type Strip,
    type StripPage,
  } from './line-geometry.ts';
import type { LineNote } from './line-notes.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    strip: Strip;
    /** The part of the strip that is drawn. */
    page: StripPage;
    spans: readonly ChordSpan[];
    seen: readonly LineNote[];
    chosen: number | null;
    landingNotes: ReadonlySet<number | null>;
    gaps: readonly Gap[];
    beatsPerBar: number;
  };function $$render() {

  
  
  
  
  
  
  

  let { strip, page, spans, seen, chosen, landingNotes, gaps, beatsPerBar }: Props = $props();
  const words = useWords();

  const pen = $derived(
    penPaths(
      strip,
      seen.flatMap((one) => (one.counts ? [one.note] : [])),
    ),
  );
  /** Degrees are written where there is room for them; a landing's always. */
  const roomy = $derived(strip.beatPx >= 60);
  const sizeOf = (index: number) => (landingNotes.has(index) ? 0.9 : 0.58);
;
async () => {


  { svelteHTML.createElement("svg", {         "width":page.widthPx,"height":strip.heightPx,"viewBox":`${page.fromPx} 0 ${page.widthPx} ${strip.heightPx}`,"aria-hidden":`true`,});__sveltets_2_ensureType(String, Number, `${page.fromPx} `);
  if(gaps.length > 0){
     { svelteHTML.createElement("pattern", {         "id":`lost`,"width":`7`,"height":`7`,"patternUnits":`userSpaceOnUse`,"patternTransform":`rotate(45)`,});
       { svelteHTML.createElement("path", {    "class":`hatch`,"d":`M0 0V7`,});}
     }
        for(let gap of __sveltets_2_ensureArray(gaps)){let i = 1;i;
       { svelteHTML.createElement("rect", {          "class":`gap`,"x":gap.x,"y":`1`,"width":gap.widthPx,"height":strip.heightPx - 2,});}
    }
  }
     for(let span of __sveltets_2_ensureArray(spans)){span.startBeat;
    const left = xOf(strip, span.startBeat);
    const right = xOf(strip, span.endBeat);
     { svelteHTML.createElement("path", {     "class":`bar`,"d":`M${left} 0V${strip.heightPx}`,});span.startBeat % beatsPerBar !== 0;}
    if(span.chord){
         for(let shore of __sveltets_2_ensureArray((shoresOf(strip, span.chord)))){shore.y;
         { svelteHTML.createElement("path", {     "class":`shore`,"d":`M${left + 1} ${shore.y}H${right - 1}`,});shore.guide;}
        if(shore.guide && right - left > 50 && shore.y > 16){
           { svelteHTML.createElement("text", {     "class":`height`,"x":right - 18,"y":shore.y - 4,});withSigns(shore.degree); }
        }
      }
    }
  }
   { svelteHTML.createElement("path", {    "class":`thin`,"d":pen.thin,});}
   { svelteHTML.createElement("path", {    "class":`thick`,"d":pen.thick,});}
     for(let one of __sveltets_2_ensureArray(seen)){one.place;
    const { note, index } = one;
    const x = xOf(strip, note.beat);
    const { y, beyond } = heightOf(strip, note.midi);
    if(one.place === chosen){ { svelteHTML.createElement("circle", {        "class":`chosen`,"cx":x,"cy":y,"r":`17`,});}}
    if(beyond !== null){
      
       { svelteHTML.createElement("g", {   "class":`beyond`,"transform":`translate(${x} ${y}) scale(1 ${beyond === 'above' ? 1 : -1})`,});
         { svelteHTML.createElement("path", {  "d":`M0 -9V-19M-5 -14L0 -20L5 -14`,});}
       }
       { svelteHTML.createElement("text", {         "class":`degree`,"x":x + 12,y,"dy":`0.35em`,"style":`text-anchor: start`,});noteWords(note.spelling, words); }
    }
    if(!one.counts){
      
       { svelteHTML.createElement("g", {   "class":`doubtful`,"transform":`translate(${x} ${y})`,});
         { svelteHTML.createElement("circle", {  "r":`6.5`,});}
        if(one.note.takenOut){ { svelteHTML.createElement("path", {  "d":`M-8 -8L8 8M8 -8L-8 8`,});}}
       }
    } else if (note.role !== null){
      const mark = ROLE_MARKS[note.role];
       { svelteHTML.createElement("path", {          "class":`mark`,"d":mark.path,"transform":`translate(${x} ${y}) scale(${sizeOf(index)})`,});!mark.filled;note.role === 'outside';__sveltets_2_ensureType(String, Number, cssColour(mark));}
      if(note.degree !== null && beyond === null && (roomy || landingNotes.has(index))){
         { svelteHTML.createElement("text", {      "class":`degree`,x,"y":y - (landingNotes.has(index) ? 17 : 13),});landingNotes.has(index);withSigns(note.degree); }
      }
    }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const TakeLineDrawing__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type TakeLineDrawing__SvelteComponent_ = ReturnType<typeof TakeLineDrawing__SvelteComponent_>;
/*Ωignore_endΩ*/export default TakeLineDrawing__SvelteComponent_;