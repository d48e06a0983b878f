///<reference types="svelte" />
;;
  interface Props {
    /** With the name beside it. */
    name?: boolean;
  };function $$render() {


  let { name = true }: Props = $props();
;
async () => {


 { svelteHTML.createElement("span", { "class":`logo`,});
   { svelteHTML.createElement("svg", {   "viewBox":`0 0 64 40`,"aria-hidden":`true`,});
     { svelteHTML.createElement("path", {    "class":`shore`,"d":`M2 26H62`,});}
     { svelteHTML.createElement("path", {    "class":`line`,"d":`M2 12C8 2 15 2 20 13S30 37 36 34S42 26 48 26`,});}
     { svelteHTML.createElement("ellipse", {            "class":`head`,"cx":`49`,"cy":`26`,"rx":`7.6`,"ry":`5.6`,"transform":`rotate(-22 49 26)`,});}
   }
  if(name){ { svelteHTML.createElement("span", { "class":`name`,});  }}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Logo__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Logo__SvelteComponent_ = ReturnType<typeof Logo__SvelteComponent_>;
/*Ωignore_endΩ*/export default Logo__SvelteComponent_;