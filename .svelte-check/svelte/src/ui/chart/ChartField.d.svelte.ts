export { default } from "./++ChartField.svelte.ts";
export * from "./++ChartField.svelte.ts";
