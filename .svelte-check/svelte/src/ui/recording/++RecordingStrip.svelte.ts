///<reference types="svelte" />
;
import { spelledChord } from '../../core/words/spelling.ts';
import type { Audition } from '../../state/audition.svelte.ts';
import { chordPlaces } from '../../state/backing-fields.ts';
import type { RecordingDraft } from '../../state/recording-draft.svelte.ts';
import { evenTrack, PEAKS_PER_SECOND } from '../../state/wave-peaks.ts';
import { drawWave, secondsAtPlace } from '../backing/draw-wave.ts';
import { sizedContext } from '../parts/canvas-size.ts';
import { eachFrame } from '../parts/frames.ts';
import { inksNow } from '../parts/inks.ts';
import PlainButton from '../parts/PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    audition: Audition;
    peaks: Float32Array;
    draft: RecordingDraft;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  

  let { audition, peaks, draft }: Props = $props();
  const words = useWords();

  /** Three or four bars: each beat can be told from the next. */
  const WIDE_SECONDS = 9;
  /** What is heard stands this far in when the page turns. */
  const MARGIN = 0.08;

  const loudest = $derived(peaks.reduce((most, peak) => Math.max(most, peak), 0));
  const span = $derived(Math.min(WIDE_SECONDS, audition.durationSeconds));
  const { setup } = $derived(draft);
  const beatsPerBar = $derived(setup.chart.ok ? setup.chart.value.meter.beatsPerBar : 4);
  const track = $derived(evenTrack(setup.settings.bpm, draft.firstBeatSeconds, audition.durationSeconds));
  const chords = $derived(
    setup.chart.ok
      ? chordPlaces(setup.chart.value, track).map((place) => ({
          ...place,
          symbol: spelledChord(place.symbol, words),
        }))
      : [],
  );
  // svelte-ignore state_referenced_locally
  let from = $state(Math.max(0, draft.firstBeatSeconds - 1));
  const sight = $derived.by(() => {
    const start = Math.min(from, audition.durationSeconds - span);
    return { from: start, to: start + span };
  });

  function draw(target: HTMLCanvasElement) {
    const { seconds } = audition;
    if (audition.playing && (seconds > sight.to - span * MARGIN || seconds < sight.from))
      from = Math.max(0, seconds - span * MARGIN);
    const sized = sizedContext(target);
    if (sized === null) return;
    drawWave(
      sized.context,
      sized.width,
      sized.height,
      {
        sight,
        peaks,
        peaksPerSecond: PEAKS_PER_SECOND,
        loudest,
        track,
        beatsPerBar,
        chosen: track.downbeat,
        chords,
        seconds,
        taps: [],
      },
      inksNow(),
    );
  }

  function goTo(event: MouseEvent & { currentTarget: HTMLCanvasElement }) {
    const box = event.currentTarget.getBoundingClientRect();
    audition.goTo(secondsAtPlace(sight, box.width, event.clientX - box.left));
  }

  function slide(seconds: number) {
    audition.goTo(seconds);
    if (seconds < sight.from || seconds > sight.to) from = Math.max(0, seconds - span / 2);
  }
;
async () => {


 { svelteHTML.createElement("div", { "class":`strip`,});
   { svelteHTML.createElement("canvas", {    "aria-hidden":`true`,"onclick":goTo,[Symbol("@attach")]:eachFrame(draw),}); }
   { svelteHTML.createElement("div", { "class":`hear`,});
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {  children:() => { return __sveltets_2_any(0); },"onclick":() => void audition.toggle(),}});audition.playing ? words.recording.pause : words.recording.listen;  PlainButton}
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", { "class":`only-heard`,});words.recording.place; }
       { svelteHTML.createElement("input", {               "type":`range`,"min":`0`,"max":audition.durationSeconds,"step":`0.01`,"value":audition.seconds,"aria-valuetext":words.recording.placeAt({ seconds: audition.seconds }),"oninput":(event) => slide(event.currentTarget.valueAsNumber),});}
     }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const RecordingStrip__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type RecordingStrip__SvelteComponent_ = ReturnType<typeof RecordingStrip__SvelteComponent_>;
/*Ωignore_endΩ*/export default RecordingStrip__SvelteComponent_;