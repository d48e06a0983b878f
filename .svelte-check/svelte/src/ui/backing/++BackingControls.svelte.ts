///<reference types="svelte" />
;
import { barsIn } from '../../core/beats/round.ts';
import type { BackingPlay } from '../../state/backings.svelte.ts';
import { beatTrack, type ChosenBacking } from '../../state/chosen-backing.ts';
import { signsInText } from '../parts/engrave.ts';
import PlainButton from '../parts/PlainButton.svelte';
import Choice from '../parts/Choice.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    standing: ChosenBacking;
    /** null goes on until stopped. */
    choruses: number | null;
    onplay: (change: Partial<BackingPlay>) => void;
    onchoruses: (choruses: number | null) => void;
    onedit: () => void;
    onremove: () => void;
    onband: () => void;
  };function $$render() {

  
  
  
  
  
  
  

  let { standing, choruses, onplay, onchoruses, onedit, onremove, onband }: Props = $props();
  const words = useWords();

  const { record, round, chart } = $derived(standing);
  const all = $derived(barsIn(beatTrack(record), chart.meter.beatsPerBar));
  const bars = $derived(Array.from({ length: all }, (_, i) => [String(i + 1), String(i + 1)] as const));
  const percents = [50, 60, 65, 70, 75, 80, 85, 90, 95, 100];
  const speeds = $derived(
    [...new Set([...percents, Math.round(100 * record.speed)])]
      .sort((a, b) => a - b)
      .map(
        (percent) =>
          [
            String(percent),
            percent === 100 ? words.backing.asRecorded : words.numbers.percent({ share: percent / 100 }),
          ] as const,
      ),
  );
  /** A round is a chorus, or the bars that were chosen. */
  const rounds = $derived([
    ...[...new Set([1, 2, 3, 4, 6, 8, 12, choruses ?? 1])]
      .sort((a, b) => a - b)
      .map((count) => [String(count), String(count)] as const),
    ['', words.backing.untilStopped] as const,
  ]);
  let asking = $state(false);

  function loop(fromBar: number, toBar: number) {
    onplay({ bars: { fromBar: Math.min(fromBar, toBar), toBar: Math.max(fromBar, toBar) } });
  }
;
async () => {


 { svelteHTML.createElement("section", { "aria-label":words.backing.yours,});
   { svelteHTML.createElement("h2", {});signsInText(record.title); }
   { svelteHTML.createElement("p", { "class":`facts`,});
    words.backing.soundsAt({ bpm: Math.round(standing.bpm), hz: standing.soundingHz });
   }
   { svelteHTML.createElement("div", { "class":`ways`,});
     { const $$_eciohC2C = __sveltets_2_ensureComponent(Choice); new $$_eciohC2C({ target: __sveltets_2_any(), props: {         "name":words.backing.speed,"value":String(Math.round(100 * record.speed)),"choices":speeds,"onchoose":(percent) => onplay({ speed: Number(percent) / 100 }),}});}
     { svelteHTML.createElement("label", {});
       { svelteHTML.createElement("span", {});words.backing.cents; }
       { svelteHTML.createElement("input", {             "type":`number`,"min":`-100`,"max":`100`,"step":`1`,"value":record.cents,"onchange":(event) => {
          const cents = event.currentTarget.valueAsNumber;
          if (cents >= -100 && cents <= 100) onplay({ cents });
          else event.currentTarget.value = String(record.cents);
        },});}
     }
     { const $$_eciohC2C = __sveltets_2_ensureComponent(Choice); new $$_eciohC2C({ target: __sveltets_2_any(), props: {         "name":words.backing.fromBar,"value":String(round.bars.fromBar),"choices":bars,"onchoose":(bar) => loop(Number(bar), Math.max(Number(bar), round.bars.toBar)),}});}
     { const $$_eciohC2C = __sveltets_2_ensureComponent(Choice); new $$_eciohC2C({ target: __sveltets_2_any(), props: {         "name":words.backing.toBar,"value":String(round.bars.toBar),"choices":bars,"onchoose":(bar) => loop(Math.min(round.bars.fromBar, Number(bar)), Number(bar)),}});}
     { const $$_eciohC2C = __sveltets_2_ensureComponent(Choice); new $$_eciohC2C({ target: __sveltets_2_any(), props: {         "name":words.backing.choruses,"value":choruses === null ? '' : String(choruses),"choices":rounds,"onchoose":(count) => onchoruses(count === '' ? null : Number(count)),}});}
   }
   { svelteHTML.createElement("div", { "class":`verbs`,});
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"disabled":record.bars === null,"onclick":() => onplay({ bars: null }),}});words.backing.allBars;  PlainButton}
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":onedit,}});words.backing.edit; PlainButton}
     { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":onband,}});words.backing.backToBand; PlainButton}
    if(asking){
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":onremove,}});words.backing.removeForGood; PlainButton}
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: { children:() => { return __sveltets_2_any(0); },"onclick":() => (asking = false),}});words.backing.keepIt; PlainButton}
    }else{
       { const $$_nottuBnialP2C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP2C({ target: __sveltets_2_any(), props: {    children:() => { return __sveltets_2_any(0); },"aria-label":words.backing.removeNamed({ title: record.title }),"onclick":() => (asking = true),}});words.backing.remove;  PlainButton}
    }
   }
 }


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const BackingControls__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type BackingControls__SvelteComponent_ = ReturnType<typeof BackingControls__SvelteComponent_>;
/*Ωignore_endΩ*/export default BackingControls__SvelteComponent_;