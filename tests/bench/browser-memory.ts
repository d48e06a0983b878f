/** Memory of a browser by process, from Linux (proc(5)): every process that was started on one profile. */
import { readdirSync, readFileSync } from 'node:fs';

export interface ProcessMemory {
  /** "browser", "renderer", "gpu-process", "utility:audio" … as Chromium names them. */
  readonly kind: string;
  /** All that stands in memory, what it shares with others included. */
  readonly residentMb: number;
  /** What it alone holds and has written to. */
  readonly privateMb: number;
}

export function browserMemory(profile: string): readonly ProcessMemory[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .flatMap((pid) => processMemory(pid, profile));
}

/** Nothing for a process that is another's, or has ended meanwhile. */
function processMemory(pid: string, profile: string): readonly ProcessMemory[] {
  try {
    const command = readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ');
    if (!command.includes(`--user-data-dir=${profile}`)) return [];
    const type = /--type=(\S+)/.exec(command)?.[1] ?? 'browser';
    const part = /--utility-sub-type=([^.\s]+)/.exec(command)?.[1];
    const sums = readFileSync(`/proc/${pid}/smaps_rollup`, 'utf8');
    const mb = (line: string) =>
      Number(new RegExp(`^${line}:\\s+(\\d+) kB`, 'm').exec(sums)?.[1] ?? 0) / 1024;
    return [
      {
        kind: part === undefined ? type : `${type}:${part}`,
        residentMb: mb('Rss'),
        privateMb: mb('Private_Dirty'),
      },
    ];
  } catch {
    return [];
  }
}
