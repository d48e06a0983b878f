/** How long work keeps the processor busy: unlike time on the clock it does not grow with what else the machine does. */

/** What the work gives, and the processor time of this process meanwhile, ms. */
export async function processorTime<Result>(
  work: () => Result | Promise<Result>,
): Promise<{ readonly result: Result; readonly milliseconds: number }> {
  const before = process.cpuUsage();
  const result = await work();
  const { user, system } = process.cpuUsage(before);
  return { result, milliseconds: (user + system) / 1000 };
}
