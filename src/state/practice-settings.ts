/** How the form is practised: what is looped, which keys it goes through, what the band leaves out or adds. */
import * as v from 'valibot';
import type { Practice } from '../core/chart/practice-chart.ts';

export interface PracticeSettings {
  readonly practice: Practice & {
    /** The chords rest in every second chorus. */
    readonly chordsRest: boolean;
    /** A click on two and four. */
    readonly backbeatClick: boolean;
  };
}

const barNumber = v.pipe(v.number(), v.integer(), v.minValue(1));

export const practiceFields: {
  readonly [K in keyof PracticeSettings]: v.GenericSchema<unknown, PracticeSettings[K]>;
} = {
  practice: v.object({
    loop: v.nullable(v.object({ fromBar: barNumber, toBar: barNumber })),
    keys: v.nullable(v.picklist(['fourths', 'half steps', 'random'] as const)),
    seed: v.pipe(v.number(), v.integer()),
    chordsRest: v.boolean(),
    backbeatClick: v.boolean(),
  }),
};

export const usualPractice: PracticeSettings = {
  practice: { loop: null, keys: null, seed: 1, chordsRest: false, backbeatClick: false },
};
