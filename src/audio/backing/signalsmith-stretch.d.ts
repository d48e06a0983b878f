/** Written for an audio worklet, the package registers its processor where it finds one; nothing else is used of it. */
declare module 'signalsmith-stretch' {
  const stretch: unknown;
  export default stretch;
}
