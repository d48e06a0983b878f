export { default } from "./++HelpDialog.svelte.ts";
export * from "./++HelpDialog.svelte.ts";
