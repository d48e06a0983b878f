export { default } from "./++ChordSymbol.svelte.ts";
export * from "./++ChordSymbol.svelte.ts";
