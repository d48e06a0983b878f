///<reference types="svelte" />
;
import type { Snippet } from 'svelte';
import type { HTMLButtonAttributes } from 'svelte/elements';
;

  interface Props extends HTMLButtonAttributes {
    strong?: boolean;
    children: Snippet;
  };function $$render() {

  
  

  let { strong = false, children, ...rest }: Props = $props();
;
async () => {


 { svelteHTML.createElement("button", {   "type":`button`,...rest,});strong;;__sveltets_2_ensureSnippet(children()); }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const PlainButton__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type PlainButton__SvelteComponent_ = ReturnType<typeof PlainButton__SvelteComponent_>;
/*Ωignore_endΩ*/export default PlainButton__SvelteComponent_;