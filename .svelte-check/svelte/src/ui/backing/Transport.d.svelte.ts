export { default } from "./++Transport.svelte.ts";
export * from "./++Transport.svelte.ts";
