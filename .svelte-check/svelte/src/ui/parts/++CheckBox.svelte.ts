///<reference types="svelte" />
;;
  interface Props {
    name: string;
    checked: boolean;
    why: string;
    onset: (on: boolean) => void;
  };function $$render() {


  let { name, checked, why, onset }: Props = $props();
;
async () => {


 { svelteHTML.createElement("label", {});
   { svelteHTML.createElement("input", {     "type":`checkbox`,checked,"onchange":(event) => onset(event.currentTarget.checked),});}
   { svelteHTML.createElement("span", {});name; { svelteHTML.createElement("small", {});why; } }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const CheckBox__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type CheckBox__SvelteComponent_ = ReturnType<typeof CheckBox__SvelteComponent_>;
/*Ωignore_endΩ*/export default CheckBox__SvelteComponent_;