export { default } from "./++DemoStage.svelte.ts";
export * from "./++DemoStage.svelte.ts";
