/** How much room this page may use, as the browser estimates it (Storage standard, WHATWG). */

/** In bytes; null where the browser does not tell. */
export async function estimateOfRoom(): Promise<{
  readonly usedBytes: number;
  readonly quotaBytes: number;
} | null> {
  try {
    const { usage, quota } = await navigator.storage.estimate();
    return usage === undefined || quota === undefined ? null : { usedBytes: usage, quotaBytes: quota };
  } catch {
    return null;
  }
}
