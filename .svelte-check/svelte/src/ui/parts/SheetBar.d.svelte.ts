export { default } from "./++SheetBar.svelte.ts";
export * from "./++SheetBar.svelte.ts";
