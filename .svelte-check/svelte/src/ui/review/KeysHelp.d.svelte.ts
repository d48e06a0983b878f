export { default } from "./++KeysHelp.svelte.ts";
export * from "./++KeysHelp.svelte.ts";
