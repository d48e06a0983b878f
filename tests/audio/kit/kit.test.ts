import { execFileSync } from 'node:child_process';
import { readFileSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { drumKeys } from '../../../src/core/band/feels/feel.ts';
import { loadKit } from '../../../src/core/sound/synth.ts';
import { kitPath } from '../../core/sound/kit-file.ts';

const beside = (name: string) => fileURLToPath(new URL(`../../../src/audio/kit/${name}`, import.meta.url));

describe('kit', () => {
  it('is under 2 MB and carries its licence', () => {
    expect(statSync(kitPath).size).toBeLessThan(2_000_000);
    const licence = readFileSync(beside('LICENSE-kit.txt'), 'utf8');
    expect(licence).toContain('Permission is hereby granted, free of charge');
    expect(licence).toContain('Frank Wen');
  });

  it('sounds bit for bit like the whole bank, every key at four velocities', () => {
    const said = execFileSync(process.execPath, [beside('trim-kit.mjs'), '--check'], { encoding: 'utf8' });
    expect(said).toContain('bit-identical');
  });

  // The bank names its samples: an outside word on what lies under each General MIDI drum key.
  it('has the drum that the map says under each key', async () => {
    const kit = await loadKit(new Uint8Array(readFileSync(kitPath)).buffer);
    const named = {
      kick: /Kick/,
      snare: /Sn/,
      sidestick: /Rim/,
      hat: /Hi-Hat Closed/,
      hatFoot: /Foot/,
      hatOpen: /Open/,
      ride: /Ride/,
      bell: /Bell/,
      crash: /Crsh/,
    };
    const kits = kit.presets.filter((preset) => preset.isDrum);
    expect(kits).toHaveLength(3);
    for (const preset of kits) {
      for (const [drum, name] of Object.entries(named)) {
        const voices = preset.getVoiceParameters(drumKeys[drum as keyof typeof named], 100);
        expect(voices.map((voice) => voice.sample.name).join(), `${preset.name}: ${drum}`).toMatch(name);
      }
    }
  });
});
