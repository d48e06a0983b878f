/** 96.4 seconds as "1:36": whole seconds begun, from 0 up. */
export function clockWords(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;
}
