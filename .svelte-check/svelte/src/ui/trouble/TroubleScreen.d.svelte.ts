export { default } from "./++TroubleScreen.svelte.ts";
export * from "./++TroubleScreen.svelte.ts";
