#!/usr/bin/python3
"""Makes the two font files of the page from Debian's fonts-inter.

    recipe.py OUTPUT_FOLDER

Figures are swapped for their tabular forms, because columns of hours must line up; then everything
the page cannot show is left out. Hints are dropped: the canvas draws at the screen's resolution.
"""

import sys
from pathlib import Path

from fontTools import subset
from fontTools.ttLib import TTFont

SOURCE = Path("/usr/share/fonts/opentype/inter")
FACES = {400: "Inter-Regular.otf", 600: "Inter-SemiBold.otf"}

FIGURES = "0123456789"
HAIR = 4  # units: one figure of the SemiBold face is drawn this much off

# Ranges as wasm/fonts.cpp puts them into its atlas.
CHARACTERS = [
    (0x0020, 0x007E),  # Basic Latin
    (0x00A0, 0x00FF),  # Latin-1
    (0x0100, 0x017F),  # Latin Extended-A
    (0x2010, 0x2027),  # dashes, quotation marks, bullet, ellipsis
    (0x202F, 0x202F),  # narrow no-break space
    (0x2030, 0x203A),  # per mille, primes, single guillemets
    (0x20AC, 0x20AC),  # euro
    (0x20A0, 0x20BF),  # other currencies, where the face has them
    (0x2190, 0x2199),  # arrows
    (0x2212, 0x2212),  # minus
    (0x2264, 0x2265),  # at most, at least
]


def tabular_forms(font):
    """Glyph of each figure -> its tabular form, from the face's own `tnum` feature."""
    forms = {}
    substitutions = font["GSUB"].table
    for record in substitutions.FeatureList.FeatureRecord:
        if record.FeatureTag != "tnum":
            continue
        for index in record.Feature.LookupListIndex:
            for table in substitutions.LookupList.Lookup[index].SubTable:
                mapping = getattr(getattr(table, "ExtSubTable", table), "mapping", {})
                forms = mapping | forms
    return forms


def bake_tabular(font):
    """Figures only: a point or a comma as wide as a figure would tear a number apart."""
    forms = tabular_forms(font)
    plain = font.getBestCmap()
    baked = {ord(figure): forms[plain[ord(figure)]] for figure in FIGURES}
    for table in font["cmap"].tables:
        if table.isUnicode():
            table.cmap = table.cmap | baked
    advances = font["hmtx"].metrics
    widest = max(advances[glyph][0] for glyph in baked.values())
    for glyph in baked.values():
        width, bearing = advances[glyph]
        if widest - width > HAIR:
            raise SystemExit(f"figure {glyph} is {widest - width} units narrower than the widest")
        advances[glyph] = (widest, bearing)


def make(source, target):
    font = TTFont(source)
    bake_tabular(font)
    options = subset.Options()
    options.hinting = False
    options.desubroutinize = True
    options.layout_features = []
    options.name_IDs = [0, 1, 2, 13, 14]  # copyright, names and licence stay with the font
    options.notdef_outline = True
    options.drop_tables += ["GDEF", "GPOS", "GSUB", "BASE", "STAT"]
    wanted = subset.Subsetter(options)
    wanted.populate(unicodes=[c for low, high in CHARACTERS for c in range(low, high + 1)])
    wanted.subset(font)
    font["head"].modified = font["head"].created  # the same bytes on every build
    font.recalcTimestamp = False
    font.save(target)


def main():
    folder = Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    for weight, name in FACES.items():
        make(SOURCE / name, folder / f"inter_{weight}.otf")


main()
