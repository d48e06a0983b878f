/** A true loop from the browser's speakers to its microphone: a PulseAudio server of its own with a null sink. */
import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface PulseLoop {
  /** For PULSE_SERVER. */
  readonly server: string;
  /** Plays a file into the loop, beside what the browser plays: the player in front of the laptop. */
  play(file: string): void;
  dispose(): void;
}

/** PulseAudio's volumes are cubic: 0.46 of 65,536 is 20 dB down, about as loud as the band starts. */
const PLAYER_VOLUME = 30_000;

const has = (command: string) => spawnSync(command, ['--version']).error === undefined;

/** Where PulseAudio is not installed there is no loop: the tests skip. */
export const pulseIsHere = (): boolean => ['pulseaudio', 'paplay', 'pactl'].every(has);

/** @param bandStaysOut the microphone hears what `play` plays, and not the browser: headphones */
export async function pulseLoop({ bandStaysOut = false } = {}): Promise<PulseLoop> {
  const folder = mkdtempSync(join(tmpdir(), 'landfall-pulse-'));
  const socket = join(folder, 'socket');
  const modules = [
    `module-native-protocol-unix socket=${socket} auth-anonymous=1`,
    ...(bandStaysOut ? ['module-null-sink sink_name=headphones rate=48000 channels=2'] : []),
    'module-null-sink sink_name=loop rate=48000 channels=2',
    'module-remap-source master=loop.monitor source_name=microphone',
  ];
  const env = { ...process.env, HOME: folder, XDG_RUNTIME_DIR: folder, PULSE_RUNTIME_PATH: folder };
  const daemon = spawn(
    'pulseaudio',
    ['-n', '--daemonize=no', '--exit-idle-time=-1', ...modules.flatMap((module) => ['-L', module])],
    { env, stdio: 'ignore' },
  );
  for (let i = 0; i < 100 && !existsSync(socket); i++) await new Promise((wait) => setTimeout(wait, 50));
  const server = `unix:${socket}`;
  if (bandStaysOut) spawnSync('pactl', ['--server', server, 'set-default-sink', 'headphones']);
  const players: ChildProcess[] = [];
  return {
    server,
    play: (file) => {
      players.push(
        spawn('paplay', ['--server', server, '--device=loop', `--volume=${PLAYER_VOLUME}`, file], {
          stdio: 'ignore',
        }),
      );
    },
    dispose: () => {
      for (const child of [...players, daemon]) child.kill();
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}
