///<reference types="svelte" />
;
import { teacherSentences } from '../../core/report/teacher-sentences.ts';
import type { Report } from '../../core/take/schema.ts';
import { signsInText } from '../parts/engrave.ts';
import { useWords } from '../words/use-words.ts';
;

  interface Props {
    report: Report;
  };function $$render() {

  
  
  
  

  let { report }: Props = $props();
  const words = useWords();

  const sentences = $derived(Object.values(teacherSentences(report, words)).flat());
;
async () => {


if(sentences.length > 0){
   { svelteHTML.createElement("section", { "aria-labelledby":`heard`,});
     { svelteHTML.createElement("h2", { "id":`heard`,});words.review.heard; }
     { svelteHTML.createElement("ul", {});
          for(let sentence of __sveltets_2_ensureArray(sentences)){let i = 1;i; { svelteHTML.createElement("li", {});signsInText(sentence); }}
     }
   }
}


};
return { props: {} as any as Props, exports: {}, bindings: __sveltets_$$bindings(''), slots: {}, events: {} }}
const TeacherHears__SvelteComponent_ = __sveltets_2_fn_component($$render());
/*Ωignore_startΩ*/type TeacherHears__SvelteComponent_ = ReturnType<typeof TeacherHears__SvelteComponent_>;
/*Ωignore_endΩ*/export default TeacherHears__SvelteComponent_;