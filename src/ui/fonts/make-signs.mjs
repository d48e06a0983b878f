/**
 * Draws signs.otf: the accidentals and chord signs that the text faces lack (flat, sharp, natural, doubles,
 * triangle, circle, struck circle, quarter note). Run after changing a shape: node src/ui/fonts/make-signs.mjs
 *
 * Units are 1000 to the em, y up, base line at 0. Stems are 78 wide to sit with the heavy Clarendon beside them;
 * side bearings are tight so that an accidental clings to its letter.
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import opentype from 'opentype.js';

/** A small pen over opentype's path: M, L, C, Z with absolute numbers, as in SVG but y up. */
function path(text, shiftX = 0) {
  const result = new opentype.Path();
  for (const [, letter, numbers] of text.matchAll(/([MLCZ])([^MLCZ]*)/g)) {
    const n = numbers
      .trim()
      .split(/[\s,]+/)
      .filter(Boolean)
      .map(Number);
    const x = (i) => n[i] + shiftX;
    if (letter === 'M') result.moveTo(x(0), n[1]);
    else if (letter === 'L') for (let i = 0; i < n.length; i += 2) result.lineTo(x(i), n[i + 1]);
    else if (letter === 'C')
      for (let i = 0; i < n.length; i += 6)
        result.curveTo(x(i), n[i + 1], x(i + 2), n[i + 3], x(i + 4), n[i + 5]);
    else result.close();
  }
  return result;
}

const ring = (cx, cy, outer, inner) => {
  const circle = (r, way) => {
    const k = 0.5523 * r;
    return way > 0
      ? `M${cx} ${cy + r}C${cx + k} ${cy + r} ${cx + r} ${cy + k} ${cx + r} ${cy}C${cx + r} ${cy - k} ${cx + k} ${cy - r} ${cx} ${cy - r}C${cx - k} ${cy - r} ${cx - r} ${cy - k} ${cx - r} ${cy}C${cx - r} ${cy + k} ${cx - k} ${cy + r} ${cx} ${cy + r}Z`
      : `M${cx} ${cy + r}C${cx - k} ${cy + r} ${cx - r} ${cy + k} ${cx - r} ${cy}C${cx - r} ${cy - k} ${cx - k} ${cy - r} ${cx} ${cy - r}C${cx + k} ${cy - r} ${cx + r} ${cy - k} ${cx + r} ${cy}C${cx + r} ${cy + k} ${cx + k} ${cy + r} ${cx} ${cy + r}Z`;
  };
  return circle(outer, 1) + circle(inner, -1);
};

const flat =
  'M40 840L118 820L112 428C150 470 205 492 258 492C350 492 404 430 404 342C404 196 268 92 60 -34L48 -20Z' +
  'M110 352L104 76C218 150 284 234 284 330C284 390 258 424 212 424C176 424 140 400 110 352Z';
const sharp =
  'M122 -92L190 -72L190 96L306 130L306 -58L374 -38L374 150L446 171L446 289L374 268L374 462L446 483L446 601L374 580L374 776L306 756L306 560L190 526L190 722L122 702L122 506L50 485L50 367L122 388L122 194L50 173L50 55L122 76Z' +
  'M190 214L190 408L306 442L306 248Z';
const natural =
  'M44 800L112 784L112 560L328 622L328 -112L260 -96L260 128L44 66Z' + 'M112 198L112 448L260 490L260 240Z';
const doubleSharp =
  'M60 110L170 110L236 196L302 110L412 110L412 200L316 276L412 352L412 442L302 442L236 356L170 442L60 442L60 352L156 276L60 200Z';
const triangle = 'M24 0L330 700L636 0Z' + 'M138 78L458 78L306 470Z';
const quarter =
  'M262 800L324 800L324 120C324 20 236 -52 142 -52C70 -52 24 -10 24 50C24 134 112 196 196 196C222 196 246 190 262 178Z';

const glyphs = [
  ['flat', 0x266d, 418, path(flat)],
  ['sharp', 0x266f, 480, path(sharp)],
  ['natural', 0x266e, 380, path(natural)],
  ['doubleflat', 0x1d12b, 700, [path(flat), path(flat, 290)]],
  ['doublesharp', 0x1d12a, 470, path(doubleSharp)],
  ['triangle', 0x394, 660, path(triangle)],
  ['circle', 0xb0, 470, path(ring(235, 480, 205, 120))],
  ['struckcircle', 0xf8, 600, [path(ring(300, 350, 240, 150)), path('M52 52L488 700L548 648L112 0Z')]],
  ['quarter', 0x2669, 370, path(quarter)],
];

const font = new opentype.Font({
  familyName: 'Landfall Signs',
  styleName: 'Regular',
  unitsPerEm: 1000,
  ascender: 900,
  descender: -200,
  glyphs: [
    new opentype.Glyph({ name: '.notdef', unicode: 0, advanceWidth: 500, path: new opentype.Path() }),
    ...glyphs.map(([name, unicode, advanceWidth, shape]) => {
      const whole = new opentype.Path();
      for (const part of [shape].flat()) whole.extend(part);
      return new opentype.Glyph({ name, unicode, advanceWidth, path: whole });
    }),
  ],
});
writeFileSync(fileURLToPath(new URL('./signs.otf', import.meta.url)), Buffer.from(font.toArrayBuffer()));
