export { default } from "./++FormSheet.svelte.ts";
export * from "./++FormSheet.svelte.ts";
