export { default } from "./++LanguageChoice.svelte.ts";
export * from "./++LanguageChoice.svelte.ts";
