/** What can be done where the delay of a take is suspected. */
export interface DelayActions {
  /** Grades the take with the delay that it makes probable. */
  readonly ontake: () => void;
  /** Whether that delay then counts for the devices, too. */
  readonly stays: boolean;
  /** null for a take that did not come through the microphone. */
  readonly onsoundcheck: (() => void) | null;
}
