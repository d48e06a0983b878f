/** Chart text counted in another meter: its heading is changed, or written above the bars where there is none. */

const METER_HEADING = /(^|;|\n)([ \t]*meter[ \t]*:[ \t]*)\d+[ \t]*\/[ \t]*\d+/i;

/**
 * @param written "3/4"
 * @example withMeter('| Bb | Eb |', '3/4') // "meter: 3/4\n| Bb | Eb |"
 */
export const withMeter = (text: string, written: string): string =>
  METER_HEADING.test(text)
    ? text.replace(METER_HEADING, (_, before: string, heading: string) => `${before}${heading}${written}`)
    : `meter: ${written}\n${text}`;
