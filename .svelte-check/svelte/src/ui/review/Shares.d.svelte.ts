export { default } from "./++Shares.svelte.ts";
export * from "./++Shares.svelte.ts";
