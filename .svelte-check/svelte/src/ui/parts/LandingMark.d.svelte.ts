export { default } from "./++LandingMark.svelte.ts";
export * from "./++LandingMark.svelte.ts";
