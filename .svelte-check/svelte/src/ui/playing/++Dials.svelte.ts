///<reference types="svelte" />
;
import {
    DIALS,
    dialPressOf,
    dialWords,
    turned,
    turnedSentence,
    type DialId,
    type DialValues,
  } from './dials.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    values: DialValues;
    countingIn: boolean;
    onturn: (id: DialId, value: number) => void;
  };function $$render() {

  
  

  let { values, countingIn, onturn }: Props = $props();
  const words = useWords();

  /** Long enough to be read from a stand. */
  const TOLD_MS = 5000;

  let taken = $state<DialId>('band');
  let told = $state('');
  let timer: ReturnType<typeof setTimeout> | undefined;
  const offered = $derived(DIALS.filter(({ id }) => values[id] !== null));
  const dial = $derived(offered.find(({ id }) => id === taken) ?? DIALS[0]!);

  let widthPx = $state(Infinity);
  let pageWidth = $state(0);
  let pageHeight = $state(0);
  /** Four dials and two buttons side by side, in CSS pixels: they grow with the window, and have a smallest size. */
  const roomForAll = $derived(pageHeight > pageWidth ? 0 : Math.max(340, 0.5 * pageHeight));
  /** Only the dial in hand is shown, for want of room; a touch of it takes the next one then. */
  const alone = $derived(widthPx < roomForAll);

  function take(id: DialId) {
    const place = offered.findIndex((one) => one.id === id);
    taken = alone && id === dial.id ? (offered[(place + 1) % offered.length]?.id ?? id) : id;
  }

  function turn(way: 1 | -1) {
    const { id } = dial;
    const before = values[id] ?? 0;
    const value = turned(dial, before, way);
    if (value !== before) onturn(id, value);
    told = turnedSentence(id, value, countingIn, words);
    clearTimeout(timer);
    timer = setTimeout(() => (told = ''), TOLD_MS);
  }

  function keydown(event: KeyboardEvent) {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const press = dialPressOf(event.key);
    if (press === null) return;
    event.preventDefault();
    if (press.kind === 'turn') turn(press.way);
    else if (values[press.id] !== null) taken = press.id;
  }

  $effect(() => () => clearTimeout(timer));
;
async () => {


 { svelteHTML.createElement("svelte:window", {      "onkeydown":keydown,"bind:innerWidth":pageWidth,"bind:innerHeight":pageHeight,});/*Ωignore_startΩ*/() => pageWidth = __sveltets_2_any(null);/*Ωignore_endΩ*//*Ωignore_startΩ*/() => pageHeight = __sveltets_2_any(null);/*Ωignore_endΩ*/}

 { const $$_div0 = svelteHTML.createElement("div", {      "class":`dials`,"role":`group`,"aria-label":words.playing.dials.name,});alone;widthPx= $$_div0.clientWidth;
     for(let { id, key } of __sveltets_2_ensureArray(offered)){id;
    const name = words.playing.dials.names[id];
    const own = name.toLowerCase().startsWith(key);
     { svelteHTML.createElement("button", {         "class":`dial`,"aria-pressed":id === dial.id,"aria-keyshortcuts":key.toUpperCase(),"onclick":() => take(id),});
       { svelteHTML.createElement("span", {  "class":`name`,}); { svelteHTML.createElement("span", { "class":`key`,});own ? name.charAt(0) : key; }own ? name.slice(1) : ` ${name}`; }
       { svelteHTML.createElement("span", { "class":`value`,});dialWords(id, values[id] ?? 0, words); }
     }
  }
   { svelteHTML.createElement("button", {        "class":`turn`,"aria-label":words.playing.dials.less[dial.id],"aria-keyshortcuts":`-`,"onclick":() => turn(-1),});  }
   { svelteHTML.createElement("button", {        "class":`turn`,"aria-label":words.playing.dials.more[dial.id],"aria-keyshortcuts":`+`,"onclick":() => turn(1),});  }
   { svelteHTML.createElement("p", {   "class":`told`,"role":`status`,});told; }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Dials__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Dials__SvelteComponent_ = ReturnType<typeof Dials__SvelteComponent_>;
/*Ωignore_endΩ*/export default Dials__SvelteComponent_;