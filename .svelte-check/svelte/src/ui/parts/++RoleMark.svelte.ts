///<reference types="svelte" />
;
import type { Role } from '../../core/take/schema.ts';
import { cssColour, OPEN_MARK, ROLE_MARKS } from './roles.ts';
;

  interface Props {
    /** null draws the open mark. */
    role: Role | null;
    size?: string;
    label?: string;
  };function $$render() {

  
  

  let { role, size = '1em', label }: Props = $props();

  const mark = $derived(role === null ? OPEN_MARK : ROLE_MARKS[role]);
;
async () => {


  { svelteHTML.createElement("svg", {            "viewBox":`-13 -13 26 26`,"role":label === undefined ? undefined : 'img',"aria-label":label,"aria-hidden":label === undefined,});!mark.filled;__sveltets_2_ensureType(String, Number, cssColour(mark));__sveltets_2_ensureType(String, Number, size);__sveltets_2_ensureType(String, Number, size);
   { svelteHTML.createElement("path", {  "d":mark.path,});}
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const RoleMark__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type RoleMark__SvelteComponent_ = ReturnType<typeof RoleMark__SvelteComponent_>;
/*Ωignore_endΩ*/export default RoleMark__SvelteComponent_;