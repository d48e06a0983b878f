/** Levels in dB as the player sees them, and changes that don't click. */

/** This level and below is silence. */
export const silentDb = -60;
/** Long enough not to click, short enough to seem immediate. */
export const rampSeconds = 0.03;

export const gainOf = (levelDb: number): number => (levelDb <= silentDb ? 0 : 10 ** (levelDb / 20));

/** Moves a gain to a value over `seconds` from now, from wherever it is. */
export function rampTo(param: AudioParam, value: number, now: number, seconds = rampSeconds): void {
  param.cancelScheduledValues(now);
  param.setValueAtTime(param.value, now);
  param.linearRampToValueAtTime(value, now + seconds);
}

/** Mixes left and right to mono from this node on, or leaves them as they are. */
export function mixToMono(node: AudioNode, mono: boolean): void {
  node.channelCount = mono ? 1 : 2;
  node.channelCountMode = mono ? 'explicit' : 'max';
}
