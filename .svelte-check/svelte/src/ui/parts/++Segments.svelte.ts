///<reference types="svelte" />
;function $$render<Value extends string | number>() {

  interface Props {
    name: string;
    value: Value;
    choices: readonly (readonly [value: Value, words: string])[];
    onchoose: (value: Value) => void;
  }
  let { name, value, choices, onchoose }: Props = $props();
  const id = $props.id();
;
async () => {


 { svelteHTML.createElement("fieldset", {});
   { svelteHTML.createElement("legend", {});name; }
     for(let [one, words] of __sveltets_2_ensureArray(choices)){one;
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("input", {        "type":`radio`,"name":id,"checked":one === value,"onchange":() => onchoose(one),});}
       { svelteHTML.createElement("span", {});words; }
     }
  }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
class __sveltets_Render<Value extends string | number> {
    props(): ReturnType<typeof $$render<Value>>['props'] { return null as any; }
    events(): ReturnType<typeof $$render<Value>>['events'] { return null as any; }
    slots(): ReturnType<typeof $$render<Value>>['slots'] { return null as any; }
    bindings() { return __sveltets_$$bindings(''); }
    exports() { return {}; }
}

interface $$IsomorphicComponent {
    new <Value extends string | number>(options: import('svelte').ComponentConstructorOptions<ReturnType<__sveltets_Render<Value>['props']>>): import('svelte').SvelteComponent<ReturnType<__sveltets_Render<Value>['props']>, ReturnType<__sveltets_Render<Value>['events']>, ReturnType<__sveltets_Render<Value>['slots']>> & { $$bindings?: ReturnType<__sveltets_Render<Value>['bindings']> } & ReturnType<__sveltets_Render<Value>['exports']>;
    <Value extends string | number>(internal: unknown, props: ReturnType<__sveltets_Render<Value>['props']> & {}): ReturnType<__sveltets_Render<Value>['exports']>;
    z_$$bindings?: ReturnType<__sveltets_Render<any>['bindings']>;
}
const Segments__SvelteComponent_: $$IsomorphicComponent = null as any;
/*Ωignore_startΩ*/type Segments__SvelteComponent_<Value extends string | number> = InstanceType<typeof Segments__SvelteComponent_<Value>>;
/*Ωignore_endΩ*/export default Segments__SvelteComponent_;