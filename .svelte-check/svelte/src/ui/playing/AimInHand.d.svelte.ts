export { default } from "./++AimInHand.svelte.ts";
export * from "./++AimInHand.svelte.ts";
