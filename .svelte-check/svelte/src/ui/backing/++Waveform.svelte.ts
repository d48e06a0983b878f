///<reference types="svelte" />
;
import { moveBeat, nearestMark } from '../../core/beats/track.ts';
import { spelledChord } from '../../core/words/spelling.ts';
import type { ChordPlace } from '../../state/backing-fields.ts';
import type { BackingDesk } from '../../state/backing-desk.svelte.ts';
import type { OpenBacking } from '../../state/ports.ts';
import { sizedContext } from '../parts/canvas-size.ts';
import { eachFrame } from '../parts/frames.ts';
import { inksNow } from '../parts/inks.ts';
import { drawWave, placeOf, secondsAtPlace, type Sight } from './draw-wave.ts';
import { beatWords } from './beat-sentences.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    desk: BackingDesk;
    sound: OpenBacking;
    chords: readonly ChordPlace[];
    /** Seconds that are in sight. */
    wide: number;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  

  let { desk, sound, chords, wide }: Props = $props();
  const words = useWords();

  /** A finger's or a pointer's reach, in pixels. */
  const REACH_PX = 14;
  const NUDGE_SECONDS = 0.01;
  const FINE_SECONDS = 0.001;

  const { facts } = $derived(sound);
  const loudest = $derived(facts.peaks.reduce((most, peak) => Math.max(most, peak), 0));
  const { editor } = $derived(desk);
  const named = $derived(chords.map((chord) => ({ ...chord, symbol: spelledChord(chord.symbol, words) })));
  let canvas = $state<HTMLCanvasElement>();
  let from = $state(0);
  const span = $derived(Math.min(wide, facts.durationSeconds));
  const sight = $derived<Sight>({ from: Math.min(from, facts.durationSeconds - span), to: 0 });
  const inSight = $derived<Sight>({ from: Math.max(0, sight.from), to: Math.max(0, sight.from) + span });
  /** Index of the beat that is being dragged, and where it is held. */
  let dragged: number | null = null;
  let heldAt = $state<number | null>(null);
  const said = $derived(
    editor.chosen === null
      ? words.backing.noBeatChosen
      : beatWords(editor.track, editor.chosen, desk.beatsPerBar, words),
  );

  function draw(target: HTMLCanvasElement) {
    const seconds = desk.playing ? sound.positionSeconds() : desk.seconds;
    if (desk.playing && (seconds > inSight.to - span * 0.08 || seconds < inSight.from))
      from = Math.max(0, seconds - span * 0.08);
    const sized = sizedContext(target);
    if (sized === null) return;
    const { track, chosen } = editor;
    // While it is dragged its neighbours follow already.
    const shown = dragged !== null && heldAt !== null ? moveBeat(track, dragged, heldAt) : track;
    drawWave(
      sized.context,
      sized.width,
      sized.height,
      {
        sight: inSight,
        peaks: facts.peaks,
        peaksPerSecond: facts.peaksPerSecond,
        loudest,
        track: shown,
        beatsPerBar: desk.beatsPerBar,
        chosen,
        chords: named,
        seconds,
        taps: desk.taps,
      },
      inksNow(),
    );
  }

  const at = (event: PointerEvent | MouseEvent): number => {
    const box = canvas!.getBoundingClientRect();
    return secondsAtPlace(inSight, box.width, event.clientX - box.left);
  };

  function press(event: PointerEvent & { currentTarget: HTMLCanvasElement }) {
    const seconds = at(event);
    const near = nearestMark(editor.track, seconds);
    const mark = editor.track.marks[near];
    const width = event.currentTarget.clientWidth;
    const off = mark
      ? Math.abs(placeOf(inSight, width, mark.seconds) - placeOf(inSight, width, seconds))
      : Infinity;
    if (off > REACH_PX) return desk.goTo(Math.max(0, seconds));
    editor.choose(near);
    if (event.pointerType === 'mouse' && event.button !== 0) return;
    dragged = near;
    event.currentTarget.setPointerCapture(event.pointerId);
  }

  function drag(event: PointerEvent) {
    if (dragged !== null) heldAt = at(event);
  }

  function drop() {
    if (dragged !== null && heldAt !== null) {
      const [index, seconds] = [dragged, heldAt];
      desk.edit((beats) => beats.move(index, seconds));
    }
    dragged = heldAt = null;
  }

  function bringIntoSight() {
    const mark = editor.chosen === null ? undefined : editor.track.marks[editor.chosen];
    if (mark && (mark.seconds < inSight.from || mark.seconds > inSight.to))
      from = Math.max(0, mark.seconds - span / 2);
  }

  const steps: Readonly<Record<string, () => number>> = {
    ArrowUp: () => -1,
    ArrowDown: () => 1,
    PageUp: () => -desk.beatsPerBar,
    PageDown: () => desk.beatsPerBar,
    Home: () => -Infinity,
    End: () => Infinity,
  };

  function key(event: KeyboardEvent) {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = steps[event.key];
    const by = event.shiftKey ? FINE_SECONDS : NUDGE_SECONDS;
    if (step) editor.choose(editor.chosen === null ? editor.track.downbeat : editor.chosen + step());
    else if (event.key === 'ArrowLeft') desk.edit((beats) => beats.nudge(-by));
    else if (event.key === 'ArrowRight') desk.edit((beats) => beats.nudge(by));
    else if (event.key === 'Delete' || event.key === 'Backspace') desk.edit((beats) => beats.remove());
    else if (event.key === 'Insert') desk.edit((beats) => beats.insertBehind());
    else return;
    event.preventDefault();
    bringIntoSight();
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`wave`,});
   { const $$_canvas1 = svelteHTML.createElement("canvas", {                             "tabindex":0,"role":`slider`,"aria-label":words.backing.wave,"aria-valuemin":1,"aria-valuemax":Math.max(1, editor.track.marks.length),"aria-valuenow":(editor.chosen ?? 0) + 1,"aria-valuetext":said,"onpointerdown":press,"onpointermove":drag,"onpointerup":drop,"onpointercancel":drop,"ondblclick":(event) => desk.edit((beats) => beats.insert(at(event))),"onkeydown":key,[Symbol("@attach")]:eachFrame(draw),});canvas = $$_canvas1; }
   { svelteHTML.createElement("label", {});
     { svelteHTML.createElement("span", { "class":`only-heard`,});words.backing.inSight; }
     { svelteHTML.createElement("input", {               "type":`range`,"min":`0`,"max":Math.max(0, facts.durationSeconds - span),"step":`0.1`,"value":inSight.from,"aria-valuetext":words.backing.inSightFrom({ seconds: Math.round(inSight.from) }),"oninput":(event) => (from = event.currentTarget.valueAsNumber),});}
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const Waveform__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type Waveform__SvelteComponent_ = ReturnType<typeof Waveform__SvelteComponent_>;
/*Ωignore_endΩ*/export default Waveform__SvelteComponent_;