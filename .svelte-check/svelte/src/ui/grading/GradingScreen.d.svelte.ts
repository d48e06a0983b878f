export { default } from "./++GradingScreen.svelte.ts";
export * from "./++GradingScreen.svelte.ts";
