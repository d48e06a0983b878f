export { default } from "./++BandTurn.svelte.ts";
export * from "./++BandTurn.svelte.ts";
