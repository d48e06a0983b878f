///<reference types="svelte" />
;;
  interface Props {
    name: string;
    value: string;
    choices: readonly (readonly [value: string, words: string])[];
    onchoose: (value: string) => void;
  };function $$render() {


  let { name, value, choices, onchoose }: Props = $props();
;
async () => {


 { svelteHTML.createElement("label", {});
   { svelteHTML.createElement("span", {});name; }
   { svelteHTML.createElement("select", {  value,"onchange":(event) => onchoose(event.currentTarget.value),});
       for(let [id, words] of __sveltets_2_ensureArray(choices)){id; { svelteHTML.createElement("option", { "value":id,});words; }}
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Choice__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Choice__SvelteComponent_ = ReturnType<typeof Choice__SvelteComponent_>;
/*Ωignore_endΩ*/export default Choice__SvelteComponent_;