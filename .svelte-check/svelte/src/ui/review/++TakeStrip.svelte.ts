///<reference types="svelte" />
;
import type { Timeline } from '../../core/chart/timeline.ts';
import { lostSentence } from '../../core/report/sentences.ts';
import type { Report } from '../../core/take/schema.ts';
import { barLine, barsOfForm, wholeBars } from '../../state/bars-of-take.ts';
import { mixes, speeds } from '../../state/playback.svelte.ts';
import KeysHelp from './KeysHelp.svelte';
import { nextChoice, notCountedIn, type LineNote } from './line-notes.ts';
import NoteExplained from './NoteExplained.svelte';
import PlaybackBar from './PlaybackBar.svelte';
import type { PlaybackVerbs } from './playback-verbs.ts';
import { focusOf, nextOf, reviewCommand, type ReviewCommand } from './review-keys.ts';
import Line from './TakeLine.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    report: Report;
    timeline: Timeline;
    line: readonly LineNote[];
    /** A place on the line. */
    chosen: number | null;
    /** null where the sound can't be played. */
    playback: PlaybackVerbs | null;
    onchoose: (place: number) => void;
    /** What the player says of a note: whether it counts, or, with null, that it is as it was heard. */
    onnote: (note: LineNote, counts: boolean | null) => void;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  
  
  

  let { report, timeline, line, chosen, playback, onchoose, onnote }: Props = $props();
  const words = useWords();

  let keysShown = $state(false);
  const lost = $derived(lostSentence(report.source.lost, words));
  const one = $derived(chosen === null ? undefined : line[chosen]);
  const looped = $derived(playback?.loop ? barsOfForm(timeline, playback.loop) : null);

  /** What is offered of the chosen note, done. */
  function onturn() {
    if (one !== undefined) onnote(one, nextChoice(one).counts);
  }

  function hearNote() {
    if (one === undefined) return;
    const { onsetSeconds, offsetSeconds } = one.note;
    void playback?.hear({ id: 'note', fromSeconds: onsetSeconds, toSeconds: offsetSeconds });
  }

  /** Goes round the bars of the chosen note's phrase, or of the place where the playback stands. */
  function turnLoop() {
    if (playback === null) return;
    if (playback.loop !== null) return void playback.setLoop(null);
    const phrase = one?.counts ? report.phrases[one.note.phrase] : undefined;
    const beat = timeline.beatMap.beatAt(playback.seconds);
    const { startBeat, endBeat } = phrase ?? {
      startBeat: one?.note.beat ?? beat,
      endBeat: one?.note.endBeat ?? beat,
    };
    void playback.setLoop(wholeBars(timeline, startBeat, endBeat));
  }

  /** The loop from or up to the bar in which the playback stands. */
  function setEdge(edge: 'fromSeconds' | 'toSeconds') {
    if (playback === null) return;
    const beat = timeline.beatMap.beatAt(playback.seconds);
    const here = wholeBars(timeline, beat, beat);
    const wanted = { ...(playback.loop ?? here), [edge]: here[edge] };
    void playback.setLoop(wanted.fromSeconds < wanted.toSeconds ? wanted : here);
  }

  const toBar = (step: -1 | 1) => void playback?.seek(barLine(timeline, playback.seconds, step));

  const deeds: Readonly<Record<ReviewCommand, () => void>> = {
    play: () => void playback?.toggle(),
    'bar back': () => toBar(-1),
    'bar on': () => toBar(1),
    start: () => void playback?.seek(playback.loop?.fromSeconds ?? 0),
    loop: turnLoop,
    'loop starts': () => setEdge('fromSeconds'),
    'loop ends': () => setEdge('toSeconds'),
    speed: () => void playback?.setSpeed(nextOf(speeds, playback.speed)),
    mix: () => playback?.setMix(nextOf(mixes, playback.mix)),
    note: hearNote,
    keys: () => (keysShown = true),
  };

  function keydown(event: KeyboardEvent) {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || keysShown) return;
    const command = reviewCommand(event.key, focusOf(event.target));
    if (command === null) return;
    event.preventDefault();
    if (!event.repeat || command.startsWith('bar ')) deeds[command]();
  }
;
async () => {


 { svelteHTML.createElement("svelte:window", {  "onkeydown":keydown,});}

if(lost !== null){ { svelteHTML.createElement("p", { "class":`lost`,});lost; words.review.lostIsHatched; }}
if(report.doubtful.length > 0){ { svelteHTML.createElement("p", { "class":`lost`,});words.review.notCounted(notCountedIn(report)); }}
if(playback){ { const $$_raBkcabyalP0C = __sveltets_2_ensureComponent(PlaybackBar); new $$_raBkcabyalP0C({ target: __sveltets_2_any(), props: {      playback,looped,"onloop":turnLoop,"onkeys":() => (keysShown = true),}});}}
 { const $$_eniL0C = __sveltets_2_ensureComponent(Line); new $$_eniL0C({ target: __sveltets_2_any(), props: {               report,line,timeline,chosen,"playhead":() => (playback === null ? null : playback.seconds),onchoose,onturn,"onseek":(seconds) => void playback?.seek(seconds),"loop":playback?.loop ?? null,"onmark":(from, to) => void playback?.setLoop(wholeBars(timeline, from, to)),}});}
 { const $$_denialpxEetoN0C = __sveltets_2_ensureComponent(NoteExplained); new $$_denialpxEetoN0C({ target: __sveltets_2_any(), props: {          report,line,chosen,onchoose,onturn,"onhear":hearNote,"heard":playback?.hearing === 'note',}});}
if(keysShown){ { const $$_pleHsyeK0C = __sveltets_2_ensureComponent(KeysHelp); new $$_pleHsyeK0C({ target: __sveltets_2_any(), props: {  "onclose":() => (keysShown = false),}});}}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const TakeStrip__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type TakeStrip__SvelteComponent_ = ReturnType<typeof TakeStrip__SvelteComponent_>;
/*Ωignore_endΩ*/export default TakeStrip__SvelteComponent_;