///<reference types="svelte" />
;
import type { ExportPart } from '../../state/export-files.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
import type { TakeFiles } from './take-files.ts';
;

  interface Props {
    files: TakeFiles;
    onsave: (part: ExportPart) => void;
  };function $$render() {

  
  
  
  

  let { files, onsave }: Props = $props();
  const words = useWords();

  let copied = $state(false);
  const names = $derived(words.review.files);
  const folder = $derived([
    files.line === null ? names.own : names.line,
    ...(files.beats ? [names.beats] : []),
    ...(files.band ? [names.band] : []),
  ]);

  async function copy() {
    try {
      await navigator.clipboard.writeText(files.command);
      copied = true;
    } catch {
      // Some browsers keep the clipboard closed; the command can still be selected by hand.
      copied = false;
    }
  }
;
async () => {


 { svelteHTML.createElement("section", { "aria-labelledby":`away`,});
   { svelteHTML.createElement("h2", { "id":`away`,});words.review.takeAlong; }
   { svelteHTML.createElement("p", {});
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onsave('report'),}});words.review.reportAsJson; PlainButton}
    if(files.line !== null){
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },"onclick":() => onsave('line'),}});files.line === 'sound' ? words.review.lineAsWav : words.review.lineAsMidi;  PlainButton}
    }
    if(files.beats){ { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onsave('beats'),}});words.review.beatsAsTable;  PlainButton}}
    if(files.band){ { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => onsave('band'),}});words.review.bandAsWav; PlainButton}}
   }
   { svelteHTML.createElement("details", {});
     { svelteHTML.createElement("summary", {});words.review.commandLine; }
     { svelteHTML.createElement("p", { "class":`why`,});words.review.commandFolder({ files: folder, band: files.band }); }
     { svelteHTML.createElement("pre", {}); { svelteHTML.createElement("code", {});files.command; } }
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => void copy(),}});copied ? words.review.copied : words.review.copy; PlainButton}
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const TakeAway__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type TakeAway__SvelteComponent_ = ReturnType<typeof TakeAway__SvelteComponent_>;
/*Ωignore_endΩ*/export default TakeAway__SvelteComponent_;