export { default } from "./++BandLevels.svelte.ts";
export * from "./++BandLevels.svelte.ts";
