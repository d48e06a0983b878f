export { default } from "./++Choice.svelte.ts";
export * from "./++Choice.svelte.ts";
