///<reference types="svelte" />
;
import type { Timeline } from '../../core/chart/timeline.ts';
import type { Stretch } from '../../state/playback.svelte.ts';
import type { Report } from '../../core/take/schema.ts';
import { eachFrame } from '../parts/frames.ts';
import {
    beatOf,
    lostStretchesOn,
    notesBetween,
    pageOf,
    heightOf,
    stripFor,
    widthOf,
    xOf,
  } from './line-geometry.ts';
import type { LineNote } from './line-notes.ts';
import LineChords from './LineChords.svelte';
import LineDrawing from './TakeLineDrawing.svelte';
import { spokenNote } from './spoken-note.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    report: Report;
    /** All notes of the report, those too that count in no share. */
    line: readonly LineNote[];
    timeline: Timeline;
    /** A place on the line. */
    chosen: number | null;
    /** Where the playback is, in seconds, or null. */
    playhead: () => number | null;
    onchoose: (place: number) => void;
    /** The chosen note is to count, or no longer to. */
    onturn: () => void;
    onseek: (seconds: number) => void;
    /** What is gone round, in seconds, or null. */
    loop: Stretch | null;
    /** Bars were marked: from and to in beats. */
    onmark: (fromBeat: number, toBeat: number) => void;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  

  let { report, line, timeline, chosen, playhead, onchoose, onturn, onseek, loop, onmark }: Props = $props();
  const words = useWords();

  const HEIGHT_PX = 300;
  const LEAST_HALF_PX = 200;
  const ZOOMS = [14, 24, 40, 64, 96, 144];
  let zoom = $state(3);
  let scroller = $state<HTMLDivElement>();
  let scrollLeft = $state(0);
  let widthPx = $state(1000);

  const endBeat = $derived(
    Math.max(timeline.beatMap.beatAt(report.source.durationSeconds), line.at(-1)?.note.endBeat ?? 0),
  );
  const strip = $derived(
    stripFor(
      line.map(({ note }) => note),
      endBeat,
      timeline.beatsPerBar,
      ZOOMS[zoom] ?? 64,
      HEIGHT_PX,
    ),
  );
  /** What is on the page changes by half a window at a time: in between, scrolling moves what is drawn and draws nothing. */
  const half = $derived(Math.max(LEAST_HALF_PX, Math.round(widthPx / 2)));
  const page = $derived(Math.floor(scrollLeft / half));
  const drawing = $derived(pageOf(strip, page * half, half));
  const from = $derived(drawing.fromBeat);
  const to = $derived(drawing.toBeat);
  const spans = $derived(timeline.spansBetween(Math.max(0, from), Math.min(to, strip.lastBeat)));
  const seen = $derived(notesBetween(line, from, to));
  /** Only notes in sight are on the page: `aria-activedescendant` must not name one that is not. */
  const drawn = $derived(seen.some(({ place }) => place === chosen));
  const gaps = $derived(
    lostStretchesOn(strip, report.source.lost ?? [], (seconds) => timeline.beatMap.beatAt(seconds)),
  );
  const looped = $derived(
    loop && ([timeline.beatMap.beatAt(loop.fromSeconds), timeline.beatMap.beatAt(loop.toSeconds)] as const),
  );
  const landingNotes = $derived(new Set(report.landings.map(({ note }) => note)));

  $effect(() => {
    const note = chosen === null ? undefined : line[chosen]?.note;
    if (note === undefined || scroller === undefined) return;
    const x = xOf(strip, note.beat);
    if (x < scroller.scrollLeft + 60 || x > scroller.scrollLeft + scroller.clientWidth - 60) {
      scroller.scrollLeft = x - scroller.clientWidth / 3;
    }
  });

  function keys(event: KeyboardEvent) {
    if ((event.key === 'Delete' || event.key === 'Backspace') && chosen !== null) {
      event.preventDefault();
      if (!event.repeat) onturn();
      return;
    }
    const last = line.length - 1;
    const at = chosen ?? -1;
    const steps: Readonly<Record<string, number>> = {
      ArrowRight: at + 1,
      ArrowLeft: Math.max(0, at - 1),
      Home: 0,
      End: last,
    };
    const wanted = steps[event.key];
    if (wanted === undefined || last < 0) return;
    event.preventDefault();
    onchoose(Math.min(last, wanted));
  }

  function press(event: MouseEvent & { currentTarget: HTMLElement }) {
    const box = event.currentTarget.getBoundingClientRect();
    onseek(Math.max(0, timeline.beatMap.secondsAt(beatOf(strip, event.clientX - box.left))));
  }

  /** The playhead moves at the display's rate, and the page follows it. */
  function movePlayhead(head: HTMLElement) {
    const seconds = playhead();
    head.hidden = seconds === null;
    if (seconds === null || scroller === undefined) return;
    const x = xOf(strip, timeline.beatMap.beatAt(seconds));
    head.style.transform = `translateX(${x}px)`;
    if (x > scroller.scrollLeft + scroller.clientWidth - 80) scroller.scrollLeft = x - 80;
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`line`,});
   { svelteHTML.createElement("div", {     "class":`zoom`,"role":`group`,"aria-label":words.review.zoom,});
     { svelteHTML.createElement("button", {        "type":`button`,"aria-label":words.review.closer,"disabled":zoom === ZOOMS.length - 1,"onclick":() => (zoom += 1),});  }
     { svelteHTML.createElement("button", {        "type":`button`,"aria-label":words.review.wider,"disabled":zoom === 0,"onclick":() => (zoom -= 1),});  }
   }
   { const $$_div1 = svelteHTML.createElement("div", {       "class":`scroller`,"onscroll":(event) => (scrollLeft = event.currentTarget.scrollLeft),});scroller = $$_div1;widthPx= $$_div1.clientWidth;
     { svelteHTML.createElement("div", {  "class":`strip`,});__sveltets_2_ensureType(String, Number, `${widthOf(strip)} `);
       { const $$_sdrohCeniL3C = __sveltets_2_ensureComponent(LineChords); new $$_sdrohCeniL3C({ target: __sveltets_2_any(), props: {      strip,spans,"beatsPerBar":timeline.beatsPerBar,looped,onmark,}});}
      
      
       { svelteHTML.createElement("div", {    "class":`field`,"onclick":press,});__sveltets_2_ensureType(String, Number, `${HEIGHT_PX} `);
         { const $$_gniwarDeniL4C = __sveltets_2_ensureComponent(LineDrawing); new $$_gniwarDeniL4C({ target: __sveltets_2_any(), props: {           strip,"page":drawing,spans,seen,chosen,landingNotes,gaps,"beatsPerBar":timeline.beatsPerBar,}});}
         { svelteHTML.createElement("div", {             "class":`notes`,"role":`listbox`,"tabindex":0,"aria-label":words.review.notesList,"aria-activedescendant":drawn ? `note-${chosen}` : undefined,"onkeydown":keys,});
             for(let one of __sveltets_2_ensureArray(seen)){one.place;
            
             { svelteHTML.createElement("span", {               "id":`note-${one.place}`,"role":`option`,"tabindex":-1,"aria-selected":one.place === chosen,"aria-label":spokenNote(one, words),"onclick":(event) => {
                event.stopPropagation();
                onchoose(one.place);
              },});__sveltets_2_ensureType(String, Number, `${xOf(strip, one.note.beat)} `);__sveltets_2_ensureType(String, Number, `${heightOf(strip, one.note.midi).y} `); }
          }
         }
         { svelteHTML.createElement("span", {   "class":`playhead`,"hidden":true,[Symbol("@attach")]:eachFrame(movePlayhead),}); }
       }
     }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const TakeLine__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type TakeLine__SvelteComponent_ = ReturnType<typeof TakeLine__SvelteComponent_>;
/*Ωignore_endΩ*/export default TakeLine__SvelteComponent_;