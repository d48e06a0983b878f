export { default } from "./++KeptCharts.svelte.ts";
export * from "./++KeptCharts.svelte.ts";
