///<reference types="svelte" />
;
import HelpLink from '../parts/HelpLink.svelte';
import type { Report } from '../../core/take/schema.ts';
import ShareRule from './ShareRule.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    shares: Report['shares'];
  };function $$render() {
 const row/*Ωignore_positionΩ*/ = ({ kind, seconds }: (typeof rows)[number])/*Ωignore_startΩ*/: ReturnType<import('svelte').Snippet>/*Ωignore_endΩ*/ => { async ()/*Ωignore_positionΩ*/ => {
  const set = shares[kind];
   { svelteHTML.createElement("h3", {});words.review.events[kind]; }
   { svelteHTML.createElement("div", { "class":`three`,});
     { const $$_eluRerahS1C = __sveltets_2_ensureComponent(ShareRule); new $$_eluRerahS1C({ target: __sveltets_2_any(), props: {     "name":words.review.tones.thirds,"share":set.thirds,seconds,}});}
     { const $$_eluRerahS1C = __sveltets_2_ensureComponent(ShareRule); new $$_eluRerahS1C({ target: __sveltets_2_any(), props: {     "name":words.review.tones.guideTones,"share":set.guideTones,seconds,}});}
     { const $$_eluRerahS1C = __sveltets_2_ensureComponent(ShareRule); new $$_eluRerahS1C({ target: __sveltets_2_any(), props: {     "name":words.review.tones.chordTones,"share":set.chordTones,seconds,}});}
   }
};return __sveltets_2_any(0)};
  
  
  
  

  let { shares }: Props = $props();
  const words = useWords();

  const rows = [
    { kind: 'landings', seconds: false },
    { kind: 'phraseEnds', seconds: false },
    { kind: 'strongBeats', seconds: false },
    { kind: 'allNotes', seconds: false },
    { kind: 'byLength', seconds: true },
  ] as const;
;
async () => {




 { svelteHTML.createElement("section", { "aria-labelledby":`shares`,});
   { svelteHTML.createElement("h2", { "id":`shares`,}); { const $$_kniLpleH2C = __sveltets_2_ensureComponent(HelpLink); new $$_kniLpleH2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"entry":`luck`,}});words.review.shares; HelpLink} }
   { svelteHTML.createElement("p", { "class":`legend`,});words.review.sharesKey; }
  ;__sveltets_2_ensureSnippet(row(rows[0]));
   { svelteHTML.createElement("details", {});
     { svelteHTML.createElement("summary", {});words.review.sharesMore; }
       for(let each of __sveltets_2_ensureArray(rows.slice(1))){each.kind;;__sveltets_2_ensureSnippet(row(each));}
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Shares__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Shares__SvelteComponent_ = ReturnType<typeof Shares__SvelteComponent_>;
/*Ωignore_endΩ*/export default Shares__SvelteComponent_;