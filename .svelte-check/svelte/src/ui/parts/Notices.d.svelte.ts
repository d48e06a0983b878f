export { default } from "./++Notices.svelte.ts";
export * from "./++Notices.svelte.ts";
