export { default } from "./++HelpLink.svelte.ts";
export * from "./++HelpLink.svelte.ts";
