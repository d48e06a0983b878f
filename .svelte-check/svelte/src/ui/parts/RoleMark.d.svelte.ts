export { default } from "./++RoleMark.svelte.ts";
export * from "./++RoleMark.svelte.ts";
