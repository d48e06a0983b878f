export { default } from "./++Logo.svelte.ts";
export * from "./++Logo.svelte.ts";
