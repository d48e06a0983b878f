///<reference types="svelte" />
;
import { tappedBpm, withTap } from '../../core/beats/tapped-tempo.ts';
import PlainButton from './PlainButton.svelte';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    onbpm: (bpm: number) => void;
  };function $$render() {

  
  
  

  let { onbpm }: Props = $props();
  const words = useWords();

  let taps = $state.raw<readonly number[]>([]);

  function tap(event: { timeStamp: number }) {
    taps = withTap(taps, event.timeStamp / 1000);
    const bpm = tappedBpm(taps);
    if (bpm !== null) onbpm(bpm);
  }

  /** A finger taps when it comes down, and not when it leaves. */
  function press(event: PointerEvent) {
    if (event.button === 0) tap(event);
  }

  function key(event: KeyboardEvent) {
    if (event.repeat || (event.key !== ' ' && event.key !== 'Enter')) return;
    event.preventDefault();
    event.stopPropagation();
    tap(event);
  }
;
async () => {


 { const $$_nottuBnialP0C = __sveltets_2_ensureComponent(PlainButton); new $$_nottuBnialP0C({ target: __sveltets_2_any(), props: {     children:() => { return __sveltets_2_any(0); },"onpointerdown":press,"onkeydown":key,"title":words.parts.tapWhy,}});words.parts.tap; PlainButton}
};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const TapTempo__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type TapTempo__SvelteComponent_ = ReturnType<typeof TapTempo__SvelteComponent_>;
/*Ωignore_endΩ*/export default TapTempo__SvelteComponent_;