/** Levels in dB as the player sees them, and changes that don't click. */

/** This and below is silence. */
export const silentDb = -60;
/** Long enough not to click, short enough to feel at once. */
export const rampSeconds = 0.03;

export const gainOf = (levelDb: number): number => (levelDb <= silentDb ? 0 : 10 ** (levelDb / 20));

/** Moves a gain to a value over `seconds` from now, from wherever it is. */
export function rampTo(param: AudioParam, value: number, now: number, seconds = rampSeconds): void {
  param.cancelScheduledValues(now);
  param.setValueAtTime(param.value, now);
  param.linearRampToValueAtTime(value, now + seconds);
}

/** Left and right mixed to one line, or left as they are, from this node on. */
export function mixToMono(node: AudioNode, mono: boolean): void {
  node.channelCount = mono ? 1 : 2;
  node.channelCountMode = mono ? 'explicit' : 'max';
}
