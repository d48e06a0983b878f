export { default } from "./++GradedBy.svelte.ts";
export * from "./++GradedBy.svelte.ts";
