export { default } from "./++OpenFiles.svelte.ts";
export * from "./++OpenFiles.svelte.ts";
