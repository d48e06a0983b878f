export { default } from "./++TakeMarks.svelte.ts";
export * from "./++TakeMarks.svelte.ts";
