export { default } from "./++ShareRule.svelte.ts";
export * from "./++ShareRule.svelte.ts";
