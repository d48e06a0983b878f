///<reference types="svelte" />
;
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    name: string;
    choices: readonly { readonly deviceId: string; readonly label: string }[];
    /** null: the system's own choice. */
    chosen: string | null;
    onchoose: (deviceId: string | null) => void;
  };function $$render() {

  

  let { name, choices, chosen, onchoose }: Props = $props();
  const words = useWords();

  const named = $derived(choices.filter(({ deviceId }) => deviceId !== 'default'));
  const value = $derived(named.some(({ deviceId }) => deviceId === chosen) ? chosen : '');
;
async () => {


 { svelteHTML.createElement("label", {});
   { svelteHTML.createElement("span", {});name; }
   { svelteHTML.createElement("select", {  value,"onchange":({ currentTarget }) => onchoose(currentTarget.value || null),});
     { svelteHTML.createElement("option", {"value":"",});words.soundCheck.systemDevice; }
        for(let { deviceId, label } of __sveltets_2_ensureArray(named)){let i = 1;deviceId; { svelteHTML.createElement("option", {  "value":deviceId,});label || words.soundCheck.deviceNumber({ kind: name, number: i + 1 }); }}
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const DevicePick__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type DevicePick__SvelteComponent_ = ReturnType<typeof DevicePick__SvelteComponent_>;
/*Ωignore_endΩ*/export default DevicePick__SvelteComponent_;