///<reference types="svelte" />
;
import type { Mixture, Palette, Thirds } from '../../core/take/schema.ts';
import HelpLink from '../parts/HelpLink.svelte';
import ChordSymbol from '../parts/ChordSymbol.svelte';
import { thirdsWords } from './thirds-words.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    thirds: Thirds;
    palette: Palette;
  };function $$render() {
 const bar/*Ωignore_positionΩ*/ = (mixture: Mixture)/*Ωignore_startΩ*/: ReturnType<import('svelte').Snippet>/*Ωignore_endΩ*/ => { async ()/*Ωignore_positionΩ*/ => {
  const shares = parts.map(({ field }) => mixture[field] ?? 0);
   { svelteHTML.createElement("svg", {     "class":`mix`,"role":`img`,"aria-label":told(mixture),});
        for(let { look } of __sveltets_2_ensureArray(parts)){let i = 1;look;
       { svelteHTML.createElement("rect", {         "class":look,"x":`${100 * shares.slice(0, i).reduce((sum, share) => sum + share, 0)}%`,"width":`${100 * (shares[i] ?? 0)}%`,"height":`100%`,});}
    }
   }
};return __sveltets_2_any(0)};
  
  
  
  
  

  let { thirds, palette }: Props = $props();
  const words = useWords();

  /** Rows that can be compared at a glance; a take through twelve keys has three dozen chords. */
  const MOST_ROWS = 8;
  const byChord = $derived(palette.byChord.length > MOST_ROWS ? [] : palette.byChord);

  const parts = [
    { field: 'minorOnly', look: 'dense' },
    { field: 'both', look: 'full' },
    { field: 'majorOnly', look: 'wide' },
    { field: 'neither', look: 'none' },
  ] as const;

  const told = (mixture: Mixture) =>
    parts
      .map(({ field }) =>
        words.review.mixture({ share: mixture[field] ?? 0, name: words.review.mixtures[field] }),
      )
      .join(', ');
;
async () => {




 { svelteHTML.createElement("section", { "aria-labelledby":`palette`,});
  
   { svelteHTML.createElement("svg", {       "class":`patterns`,"width":`0`,"height":`0`,"aria-hidden":`true`,});
     { svelteHTML.createElement("pattern", {           "id":`hatch-dense`,"width":`4`,"height":`4`,"patternUnits":`userSpaceOnUse`,"patternTransform":`rotate(45)`,});
       { svelteHTML.createElement("path", {    "class":`ink`,"d":`M1 0V4`,});}
     }
     { svelteHTML.createElement("pattern", {           "id":`hatch-wide`,"width":`8`,"height":`8`,"patternUnits":`userSpaceOnUse`,"patternTransform":`rotate(-45)`,});
       { svelteHTML.createElement("path", {    "class":`shore`,"d":`M2 0V8`,});}
     }
   }
   { svelteHTML.createElement("h2", { "id":`palette`,}); { const $$_kniLpleH2C = __sveltets_2_ensureComponent(HelpLink); new $$_kniLpleH2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"entry":`palette`,}});words.review.palette; HelpLink} }
  if(thirds.notes > 0){ { svelteHTML.createElement("p", { "class":`words`,});thirdsWords(thirds, words); }}
  if(palette.overall.minorOnly !== null){
     { svelteHTML.createElement("div", { "class":`rows`,});
       { svelteHTML.createElement("span", {});words.review.all; };__sveltets_2_ensureSnippet(bar(palette.overall));
         for(let { chord, degree, mixture } of __sveltets_2_ensureArray(byChord)){`${chord} ${degree}`;
         { svelteHTML.createElement("span", { "class":`chord`,}); { const $$_lobmySdrohC3C = __sveltets_2_ensureComponent(ChordSymbol); new $$_lobmySdrohC3C({ target: __sveltets_2_any(), props: {  "symbol":chord,}});} };__sveltets_2_ensureSnippet(bar(mixture));
      }
     }
     { svelteHTML.createElement("ul", { "class":`legend`,});
         for(let { field, look } of __sveltets_2_ensureArray(parts)){field; { svelteHTML.createElement("li", {});
           { svelteHTML.createElement("svg", {   "class":`swatch`,"aria-hidden":`true`,}); { svelteHTML.createElement("rect", {      "class":look,"width":`100%`,"height":`100%`,});} }words
            .review.mixtures[field];
         }}
     }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Palette__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Palette__SvelteComponent_ = ReturnType<typeof Palette__SvelteComponent_>;
/*Ωignore_endΩ*/export default Palette__SvelteComponent_;