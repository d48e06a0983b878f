export { default } from "./++SuspectedChart.svelte.ts";
export * from "./++SuspectedChart.svelte.ts";
