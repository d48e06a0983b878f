///<reference types="svelte" />
;
import SheetBarView from './SheetBar.svelte';
import type { Landing } from '../../core/take/schema.ts';
import { barsInRow, landingsByBar, type SheetBar } from './sheet.ts';
;

  interface Props {
    bars: readonly SheetBar[];
    landings?: readonly Landing[];
    memory?: number;
    /** Bars that the player sits out. */
    tacet?: ReadonlySet<number>;
    slashes?: boolean;
    /** Bars in a row at most. */
    mostInRow?: 4 | 8;
    freshIndex?: number;
    label: string;
    onlanding?: (index: number) => void;
    /** Filled with the list element, for a screen that moves the place by hand. */
    list?: HTMLOListElement | undefined;
  };function $$render() {

  
  
  

  let {
    bars,
    landings = [],
    memory = 6,
    tacet,
    slashes = false,
    mostInRow = 8,
    freshIndex = -1,
    label,
    onlanding,
    list = $bindable(),
  }: Props = $props()/*Ωignore_startΩ*/;list;/*Ωignore_endΩ*/;

  let widthPx = $state(1000);
  const inRow = $derived(barsInRow(bars.length, widthPx, mostInRow));
  let before: ReturnType<typeof landingsByBar> = [];
  const gathered = $derived.by(
    () => (before = landingsByBar(landings, bars.length, bars[0]?.beats ?? 4, before)),
  );
;
async () => {


 { const $$_div0 = svelteHTML.createElement("div", {  "class":`page`,});widthPx= $$_div0.clientWidth;
   { const $$_ol1 = svelteHTML.createElement("ol", {      "aria-label":label,});list = $$_ol1;__sveltets_2_ensureType(String, Number, inRow);__sveltets_2_ensureType(String, Number, Math.ceil(bars.length / inRow));
       for(let bar of __sveltets_2_ensureArray(bars)){bar.index;
       { const $$_weiVraBteehS2C = __sveltets_2_ensureComponent(SheetBarView); new $$_weiVraBteehS2C({ target: __sveltets_2_any(), props: {            bar,"landings":gathered[bar.index] ?? [],memory,"tacet":tacet?.has(bar.index) ?? false,slashes,freshIndex,onlanding,"last":bar.index === bars.length - 1,}});}
    }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings('list'), slots: {}, events: {} }}
const FormSheet__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type FormSheet__SvelteComponent_ = ReturnType<typeof FormSheet__SvelteComponent_>;
/*Ωignore_endΩ*/export default FormSheet__SvelteComponent_;