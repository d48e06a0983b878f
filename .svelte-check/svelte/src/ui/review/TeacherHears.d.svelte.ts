export { default } from "./++TeacherHears.svelte.ts";
export * from "./++TeacherHears.svelte.ts";
