"""Cuts landfall-music.woff2 out of Bravura: the signs that the written line needs. Needs fonttools and brotli (pip).

python3 cut-music-font.py bravura.woff2 landfall-music.woff2

Bravura is under the SIL Open Font License 1.1 with the reserved name "Bravura": what is cut out of it bears another name.
"""
import sys
from fontTools import subset
from fontTools.ttLib import TTFont

RANGES = [
    (0xE050, 0xE052), (0xE05C, 0xE05C), (0xE062, 0xE064), (0xE06D, 0xE06E),  # clefs, tablature
    (0xE080, 0xE08B),  # time signatures
    (0xE0A0, 0xE0A4), (0xE1D0, 0xE1E7),  # heads, notes, dot
    (0xE240, 0xE247), (0xE260, 0xE264), (0xE4E0, 0xE4EA),  # flags, accidentals, rests
    (0xE560, 0xE565), (0xE880, 0xE88A),  # grace notes, figures of groups
]
options = subset.Options()
options.flavor = 'woff2'
options.layout_features = []
options.name_IDs = [0, 1, 2, 3, 4, 5, 6, 14]
options.drop_tables += ['GSUB', 'GPOS', 'DSIG']
options.hinting = False
font = TTFont(sys.argv[1])
cutter = subset.Subsetter(options)
cutter.populate(unicodes=[sign for first, last in RANGES for sign in range(first, last + 1)])
cutter.subset(font)
for record in font['name'].names:
    if record.nameID in (1, 4):
        record.string = 'Landfall Music'
    if record.nameID == 3:
        record.string = 'Landfall Music, from Bravura 1.392'
    if record.nameID == 6:
        record.string = 'LandfallMusic'
    if record.nameID == 0:
        record.string = ('Copyright (c) 2021, Steinberg Media Technologies GmbH (http://www.steinberg.net/), with Reserved '
                         'Font Name "Bravura". Cut for Landfall. SIL Open Font License, Version 1.1.')
font.flavor = 'woff2'
font.save(sys.argv[2])
