export { default } from "./++DayCourse.svelte.ts";
export * from "./++DayCourse.svelte.ts";
