export { default } from "./++CheckBox.svelte.ts";
export * from "./++CheckBox.svelte.ts";
