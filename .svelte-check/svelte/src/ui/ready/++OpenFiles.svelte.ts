///<reference types="svelte" />
;
import { tick } from 'svelte';
import type { RecordingFiles } from '../../state/open-take.ts';
import { LINE_FILES } from '../parts/accepted-files.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    disabled: boolean;
    onfiles: (files: RecordingFiles) => void;
  };function $$render() {

  
  
  
  
  

  let { disabled, onfiles }: Props = $props();
  const words = useWords();

  let chooser = $state<HTMLInputElement>();
  let dialog = $state<HTMLDialogElement>();
  /** Two files, until the player has said in which one he or she plays. */
  let two = $state.raw<readonly File[]>([]);
  let tooMany = $state(false);

  async function take(files: readonly File[]) {
    tooMany = files.length > 2;
    const [line] = files;
    if (line === undefined || disabled || tooMany) return;
    if (files.length === 1) return onfiles({ line, backing: null });
    two = files;
    await tick();
    dialog?.showModal();
  }

  function choose(line: File) {
    const backing = two.find((file) => file !== line) ?? null;
    dialog?.close();
    onfiles({ line, backing });
  }

  function fromChooser(event: Event & { currentTarget: HTMLInputElement }) {
    void take([...(event.currentTarget.files ?? [])]);
    event.currentTarget.value = '';
  }

  function fall(event: DragEvent) {
    if (event.dataTransfer === null || event.dataTransfer.files.length === 0) return;
    event.preventDefault();
    void take([...event.dataTransfer.files]);
  }

  /** Without this the browser would leave the page for the file. */
  function allow(event: DragEvent) {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
  }
;
async () => {


 { svelteHTML.createElement("svelte:window", {    "ondragover":allow,"ondrop":fall,});}

 { const $$_nottuBnialP0C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP0C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },disabled,"onclick":() => chooser?.click(),}});words.ready.openRecording; PlainButton}
  { const $$_input0 = svelteHTML.createElement("input", {        "type":`file`,"multiple":true,"accept":LINE_FILES,"onchange":fromChooser,"hidden":true,});chooser = $$_input0;}
if(tooMany){
   { svelteHTML.createElement("p", { "role":`alert`,});words.ready.tooManyFiles; }
}

 { const $$_dialog0 = svelteHTML.createElement("dialog", {     "aria-labelledby":`which`,"onclose":() => (two = []),});dialog = $$_dialog0;
   { svelteHTML.createElement("h2", { "id":`which`,});words.ready.whichIsYou; }
   { svelteHTML.createElement("p", {});words.ready.otherIsBacking; }
   { svelteHTML.createElement("ul", {});
       for(let file of __sveltets_2_ensureArray(two)){file;
       { svelteHTML.createElement("li", {}); { svelteHTML.createElement("button", {     "type":`button`,"class":`file`,"onclick":() => choose(file),});file.name; } }
    }
   }
   { const $$_nottuBnialP1C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP1C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => dialog?.close(),}});words.ready.neither; PlainButton}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const OpenFiles__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type OpenFiles__SvelteComponent_ = ReturnType<typeof OpenFiles__SvelteComponent_>;
/*Ωignore_endΩ*/export default OpenFiles__SvelteComponent_;