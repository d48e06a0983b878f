/** Keeps the display lit while an element is on the page: both hands are on the instrument. Screen Wake Lock (W3C). */

/** An attachment: `{@attach keepAwake}`. Where the browser can't or refuses, the display dims as usual. */
export function keepAwake(): () => void {
  let lock: WakeLockSentinel | null = null;
  let gone = false;
  const ask = async () => {
    if (gone || document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
    try {
      lock = await navigator.wakeLock.request('screen');
      // The page may have gone while the browser thought.
      if (gone) void lock.release();
    } catch {
      // Low battery, or not allowed: nothing to tell a player about.
    }
  };
  // The browser takes the lock away with the page out of sight.
  const seen = () => void ask();
  document.addEventListener('visibilitychange', seen);
  void ask();
  return () => {
    gone = true;
    document.removeEventListener('visibilitychange', seen);
    void lock?.release();
  };
}
