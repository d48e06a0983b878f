///<reference types="svelte" />
;
import type { LevelReading } from '../../core/room/check/input-level.ts';
import { describeLevel } from './describe-measurements.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    level: LevelReading | null;
  };function $$render() {

  
  
  

  let { level }: Props = $props();
  const words = useWords();
  const described = $derived(describeLevel(level, words));

  const LOWEST_DB = -70;
  const place = (db: number) =>
    `${(100 * (1 - Math.max(LOWEST_DB, Math.min(0, db)) / LOWEST_DB)).toFixed(1)}%`;
;
async () => {


 { svelteHTML.createElement("div", {   "class":`line`,"aria-hidden":`true`,});
  if(level !== null){
     { svelteHTML.createElement("span", {  "class":`floor`,});__sveltets_2_ensureType(String, Number, place(level.floorDb)); }
     { svelteHTML.createElement("span", {   "class":`peak`,});level.verdict === 'too hot';__sveltets_2_ensureType(String, Number, place(level.peakDb)); }
  }
 }
 { svelteHTML.createElement("p", {   "class":`verdict`,"aria-live":`polite`,});described.verdict; }
 { svelteHTML.createElement("p", { "class":`facts`,});described.facts; }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const LevelLine__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type LevelLine__SvelteComponent_ = ReturnType<typeof LevelLine__SvelteComponent_>;
/*Ωignore_endΩ*/export default LevelLine__SvelteComponent_;