///<reference types="svelte" />
;
import './fonts/fonts.css';
import './tokens.css';
import './base.css';
import { tick } from 'svelte';
import { timelineAsRead } from '../core/chart/as-read.ts';
import { listForms } from '../core/chart/forms.ts';
import { instrumentOf } from '../core/music/instruments.ts';
import { readingOf } from '../core/music/reading.ts';
import { reportAsRead } from '../core/report/as-read.ts';
import { closestLanguage } from '../core/words/languages.ts';
import type { AppState } from '../state/app-state.ts';
import type { Step } from '../state/foot-switch.ts';
import { Footwork, pressOf, type Command, type Under } from './hands/footwork.ts';
import BackingScreen from './backing/BackingScreen.svelte';
import HelpDialog from './help/HelpDialog.svelte';
import GradingScreen from './grading/GradingScreen.svelte';
import Notices from './parts/Notices.svelte';
import { takeTitle, titleAsRead } from './parts/sentences.ts';
import { provideHelp } from './parts/use-help.ts';
import { keptTheme, showTheme } from './parts/theme.ts';
import { provideWords } from './words/use-words.ts';
import type { DialId } from './playing/dials.ts';
import { dialValues, setTempo } from './playing/dial-values.ts';
import DemoStage from './playing/DemoStage.svelte';
import PlayingScreen from './playing/PlayingScreen.svelte';
import { formChoices } from './ready/form-choice.ts';
import ProgressScreen from './progress/ProgressScreen.svelte';
import ReadyScreen from './ready/ReadyScreen.svelte';
import RecordingScreen from './recording/RecordingScreen.svelte';
import ReviewScreen from './review/ReviewScreen.svelte';
import SoundCheckScreen from './soundcheck/SoundCheckScreen.svelte';
import TroubleScreen from './trouble/TroubleScreen.svelte';
import type { Message } from '../core/words/problem.ts';
import { isSameMessage, withMessage } from '../state/messages.ts';
import { suspectedActions } from './review/suspected-actions.ts';
import { openedRecording } from './review/opened-recording.ts';
import { namingOf } from './parts/naming.ts';
import { adviceVerbs } from './review/advice-verbs.ts';
import { takeFiles } from './review/take-files.ts';
;

  interface Props {
    app: AppState;
  };function $$render() {

  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  
  

  let { app }: Props = $props();
  const { setup, session, tries, library, songbook, midi, soundCheck, backings } = $derived(app);
  const { backingDesk, recordingDesk } = $derived(app);

  /** How long the page of a take stands before it goes on by itself: the sentence and the form are read by then. */
  const SECONDS_TO_LOOK = 8;

  showTheme(keptTheme());

  const language = $derived(setup.settings.language ?? closestLanguage(navigator.languages));
  const words = provideWords(() => language);
  provideHelp((entry) => app.pages.openHelp(entry));
  $effect(() => {
    document.documentElement.lang = language;
  });

  const forms = $derived(formChoices(listForms(), words));
  const phase = $derived(session.phase);
  /** Whether the count-in begins again. The playing screen stays until it does. */
  let countingAgain = $state(false);
  const screen = $derived.by(() => {
    if (phase.kind === 'opening') return countingAgain && session.timeline !== null ? 'playing' : 'ready';
    return phase.kind === 'counting-in' ? 'playing' : phase.kind;
  });
  const laying = $derived(screen === 'ready' ? backingDesk.record : null);
  const overDays = $derived(screen === 'ready' && app.pages.progress);
  const checking = $derived(screen === 'ready' && soundCheck.step !== 'closed');
  const opening = $derived(screen === 'ready' && recordingDesk.isOpen);
  let putAway = $state.raw<readonly Message[]>([]);
  const messages = $derived(
    [
      ...setup.notices,
      ...library.notices,
      ...songbook.notices,
      ...backings.notices,
      ...session.notices,
    ].reduce<readonly Message[]>(
      (listed, message) =>
        putAway.some((other) => isSameMessage(other, message)) ? listed : withMessage(listed, message),
      [],
    ),
  );

  /** At what pitch chords and names stand on the page; what is kept and exported stays at concert pitch. */
  const reading = $derived(readingOf(instrumentOf(setup.settings.instrument), setup.settings.pitch));
  const playedTimeline = $derived(
    session.timeline === null ? null : timelineAsRead(session.timeline, reading),
  );
  /** A take is read as its own instrument reads, whatever is in the hands now. */
  const review = $derived.by(() => {
    if (phase.kind !== 'review') return null;
    const { details, report, timeline } = phase.review;
    const pitch = readingOf(instrumentOf(details.instrument ?? ''), setup.settings.pitch);
    const read = timelineAsRead(timeline, pitch);
    return {
      title: takeTitle(details, pitch, words),
      naming: namingOf(phase.review, (change) => session.mark(change)),
      report: reportAsRead(report, pitch),
      timeline: read,
      first: tries.tried && {
        report: reportAsRead(tries.tried.first.report, pitch),
        bars: tries.tried.bars,
      },
    };
  });
  const verbs = $derived(
    phase.kind === 'review' && session.playback !== null ? adviceVerbs(phase.review, session.playback) : null,
  );

  /** A title as it is read in the language of the page. */
  const titled = (title: string) => titleAsRead(title, readingOf(null, 'concert'), words);

  /** When the demo was opened that has been heard on its stage: its review comes after. */
  let demoHeard = $state('');
  const freshDemo = $derived(
    phase.kind === 'review' && phase.review.details.source === 'demo' && phase.review.details.startedAt,
  );

  function openSoundCheck() {
    session.close();
    void soundCheck.open();
  }

  /** The session forgets what is put away; what the others tell stays true, and is not shown again. */
  function dismiss(message: Message) {
    if (session.notices.some((other) => isSameMessage(other, message))) session.dismissNotice(message);
    else putAway = withMessage(putAway, message);
  }

  /** A new screen begins at its top, on the page and in a screen reader. */
  let before = '';
  $effect(() => {
    const page = opening ? 'recording' : laying !== null ? 'beats' : overDays ? 'progress' : screen;
    const now = checking ? 'sound check' : page;
    if (before !== '' && before !== now) {
      void tick().then(() => {
        window.scrollTo(0, 0);
        document.querySelector<HTMLElement>('main')?.focus({ preventScroll: true });
      });
    }
    before = now;
  });

  function act(command: Command) {
    if (command === 'back') session.close();
    else if (screen === 'playing') void session.stop();
    else if (command === 'next aim') takeNextAim();
    else if (screen === 'ready' || screen === 'review' || screen === 'trouble') void session.again();
  }

  /** What the report offers, and at it again. */
  function takeNextAim() {
    const next = phase.kind === 'review' ? phase.review.report.nextAim : null;
    void session.again({ ...(next !== null && { aim: next.id }), tryBars: 'none' });
  }

  const dials = $derived(dialValues(setup));
  /** Turns of a dial that follow each other this fast begin the count-in once. */
  const TURNED_MS = 500;
  let turning: ReturnType<typeof setTimeout> | undefined;

  /** The band is heard at once; time can't be bent under a take, so it holds from the next count-in on. */
  function turnDial(id: DialId, value: number) {
    if (id === 'band') return session.setLevel('all', value);
    if (id === 'tempo') setTempo(value, setup, backings);
    else if (id === 'swing') setup.setSwing(value);
    else setup.setCountIn(value);
    clearTimeout(turning);
    if (phase.kind === 'counting-in' || countingAgain) turning = setTimeout(countInAgain, TURNED_MS);
  }

  // What is on the stand lies there again on the next visit.
  $effect(() => backings.remember(setup.backing?.record.id ?? null));

  /** Begins the count-in again; nothing has been played yet, so nothing is lost. */
  async function countInAgain() {
    if (phase.kind !== 'counting-in') return;
    countingAgain = true;
    session.close(true);
    await session.start();
    countingAgain = false;
  }

  const foot = new Footwork({
    screen: () => screen,
    act,
    later: (then, ms) => {
      const timer = setTimeout(then, ms);
      return () => clearTimeout(timer);
    },
  });

  function takeStep(step: Step) {
    if (step !== 'up') foot.press('first');
    if (step !== 'down') foot.release();
  }

  // A MIDI foot switch runs the screen where the player said so; on a later visit nothing is asked again.
  $effect(() => {
    const { midiPedal, input, foot: learned } = setup.settings;
    midi.onFoot(midiPedal ? takeStep : null, learned);
    if (midiPedal || input === 'midi') void midi.reconnect();
  });

  function underFocus(target: EventTarget | null): Under {
    if (!(target instanceof Element)) return null;
    if (target.closest('input, select, textarea, [role=listbox]')) return 'field';
    return target.closest('button, summary, a') ? 'button' : null;
  }

  function keydown(event: KeyboardEvent) {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (checking) {
      if (event.key === 'Escape') soundCheck.close();
      return;
    }
    // These screens have keys of their own.
    if (laying !== null || overDays || opening) return;
    const press = pressOf(event.key, screen, setup.settings.pedal, underFocus(event.target));
    if (press === null) return;
    event.preventDefault();
    if (!event.repeat) foot.press(press);
  }
;
async () => {


 { svelteHTML.createElement("svelte:window", {      "onkeydown":keydown,"onkeyup":() => foot.release(),"onblur":() => foot.release(),});}

if(freshDemo && freshDemo !== demoHeard && playedTimeline !== null){
   { const $$_egatSomeD0C = __sveltets_2_ensureComponent(DemoStage); new $$_egatSomeD0C({ target: __sveltets_2_any(), props: {      session,"timeline":playedTimeline,setup,"onend":() => (demoHeard = freshDemo || ''),}});}
} else if (phase.kind === 'review' && review !== null){
  const { details } = phase.review;
   { const $$_neercSweiveR0C = __sveltets_2_ensureComponent(ReviewScreen); new $$_neercSweiveR0C({ target: __sveltets_2_any(), props: {                    "take":review,"playback":session.playback,"recording":openedRecording(phase.review, { session, setup, songbook, forms, titled }),"files":takeFiles(phase.review),"suspected":suspectedActions(phase.review, (what) => session.takeSuspected(what), openSoundCheck),"again":{
      how:
        tries.tried !== null
          ? 'bars'
          : ['microphone', 'midi'].includes(details.source)
            ? 'again'
            : 'yourself',
      inSeconds: setup.settings.repeat && session.endedByItself ? SECONDS_TO_LOOK : null,
      onagain: () => void session.again(),
      onnextaim: takeNextAim,
      ontry: (bars) => void session.again({ tryBars: bars }),
      onwhole: () => void session.again({ tryBars: 'none' }),
    },verbs,"onback":() => session.close(),"onnote":(note, counts) => void session.chooseNote(note, counts),"onsave":(part) => session.save(part),}});}
} else if (phase.kind === 'trouble'){
   { const $$_neercSelbuorT0C = __sveltets_2_ensureComponent(TroubleScreen); new $$_neercSelbuorT0C({ target: __sveltets_2_any(), props: {         "problem":phase.problem,"wayOn":phase.wayOn,"onagain":() => void session.again(),"onback":() => session.close(),}});}
} else if (phase.kind === 'grading'){
   { const $$_neercSgnidarG0C = __sveltets_2_ensureComponent(GradingScreen); new $$_neercSgnidarG0C({ target: __sveltets_2_any(), props: {  "progress":phase.progress,}});}
} else if (screen === 'playing' && playedTimeline !== null){
   { const $$_neercSgniyalP0C = __sveltets_2_ensureComponent(PlayingScreen); new $$_neercSgniyalP0C({ target: __sveltets_2_any(), props: {                    "timeline":playedTimeline,"live":() => session.live,"landings":session.landingsSoFar,"aim":session.aimSoFar,"choruses":setup.settings.choruses,"settings":setup.settings,"occasion":library.takes.length === 0 ? 'first take' : 'take',dials,"onturn":turnDial,"onstop":() => void session.stop(),}});}
} else if (checking){
   { const $$_neercSkcehCdnuoS0C = __sveltets_2_ensureComponent(SoundCheckScreen); new $$_neercSkcehCdnuoS0C({ target: __sveltets_2_any(), props: {  "check":soundCheck,}});}
} else if (opening){
   { const $$_neercSgnidroceR0C = __sveltets_2_ensureComponent(RecordingScreen); new $$_neercSgnidroceR0C({ target: __sveltets_2_any(), props: {      "desk":recordingDesk,"lying":recordingDesk.lying,forms,songbook,}});}
} else if (laying !== null){
   { const $$_neercSgnikcaB0C = __sveltets_2_ensureComponent(BackingScreen); new $$_neercSgnikcaB0C({ target: __sveltets_2_any(), props: {    "desk":backingDesk,"record":laying,}});}
} else if (overDays){
   { const $$_neercSssergorP0C = __sveltets_2_ensureComponent(ProgressScreen); new $$_neercSssergorP0C({ target: __sveltets_2_any(), props: { app,}});}
}else{
   { const $$_neercSydaeR0C = __sveltets_2_ensureComponent(ReadyScreen); new $$_neercSydaeR0C({ target: __sveltets_2_any(), props: {     app,forms,language,"onrecording":(files) => void recordingDesk.open(files),}});}
}
 { const $$_golaiDpleH0C = __sveltets_2_ensureComponent(HelpDialog); new $$_golaiDpleH0C({ target: __sveltets_2_any(), props: {  "pages":app.pages,}});}
 { const $$_secitoN0C = __sveltets_2_ensureComponent(Notices); new $$_secitoN0C({ target: __sveltets_2_any(), props: {     messages,"playing":screen === 'playing',"ondismiss":dismiss,}});}
};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const App__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type App__SvelteComponent_ = ReturnType<typeof App__SvelteComponent_>;
/*Ωignore_endΩ*/export default App__SvelteComponent_;