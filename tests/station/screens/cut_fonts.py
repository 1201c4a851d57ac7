"""Cuts fonts of other scripts: python -m tests.station.screens.cut_fonts FOLDER.

FOLDER holds NotoSansGurmukhi-Regular.ttf, -Bold.ttf, NotoSansCJK-Regular.ttc and -Bold.ttc, as
Debian's fonts-noto-core and fonts-noto-cjk have them. Needs fontTools, which nothing else does.
Gurmukhi is kept whole, and has the digits and common signs of the labels' fonts added: a run of
Gurmukhi letters takes those beside it from the same font. Of the Chinese characters those are kept
that the translations use, and all of level 1 of GB/T 2312, the 3755 most common ones, so that
whoever reviews a translation need not cut fonts.
"""

import sys
import tempfile
from pathlib import Path

from fontTools import merge, subset
from fontTools.ttLib import TTCollection, TTFont

from station.core.languages import Language
from tests.station.screens.messages import FOLDER, file_of, read

GURMUKHI = (*range(0x0A00, 0x0A80), 0x0964, 0x0965, 0x200C, 0x200D, 0x25CC)
CHINESE_SIGNS = (*range(0x3000, 0x3020), *range(0xFF00, 0xFF66), 0x00B7, 0x2014, 0x2018, 0x2019)
CHINESE_SIGNS += (0x201C, 0x201D, 0x2026)
SIGNS = {*range(0x20, 0x41), *range(0x5B, 0x61), *range(0x7B, 0x7F), 0xA0, 0xB7, 0xD7, 0x2013}
SIGNS |= {0x2019, 0x2026, 0x2212}
"""Digits and signs that belong to no script."""
BESIDE = {"Regular": "PackLineSans-Regular.ttf", "Bold": "PackLineSansCondensed-Bold.ttf"}
LABEL_FONTS = Path(__file__).parents[3] / "labels" / "fonts"
_SC = "Noto Sans CJK SC"
_HAN_EM = 1087
"""Units of an em instead of 1000: beside Latin capitals Chinese characters are then 1.2 times as
high, and reach as far below the line as above the capitals."""


def level_1() -> set[int]:
    """Rows 16 to 55 of GB/T 2312."""
    found = set()
    for row in range(16, 56):
        for cell in range(1, 95):
            try:
                found.add(ord(bytes((row + 0xA0, cell + 0xA0)).decode("gb2312")))
            except UnicodeDecodeError:
                continue
    return found


def used(language: Language) -> set[int]:
    """Characters of a language's translations and of its own name."""
    words = "".join(words for words, _ in read(file_of(language)).values())
    return {ord(sign) for sign in words + language.own_name}


def cut(font: TTFont, signs: set[int], family: str, weight: str, target: Path) -> None:
    """Keep the glyphs of these characters, give the font a name of its own and write it."""
    options = subset.Options(hinting=False, layout_features=["*"], notdef_outline=True)
    options.drop_tables += ["vhea", "vmtx", "VORG", "BASE", "DSIG"]
    if "CFF " in font:
        options.layout_features = ["kern", "locl", "ccmp"]
        options.desubroutinize = False
    cutter = subset.Subsetter(options)
    cutter.populate(unicodes=signs)
    cutter.subset(font)
    names = font["name"]
    for record in list(names.names):
        if record.nameID not in (0, 7, 13, 14):
            names.removeNames(nameID=record.nameID)
    full = family if weight == "Regular" else f"{family} {weight}"
    for number, words in (
        *((1, full), (2, "Regular"), (3, f"1.0;{full}"), (4, full)),
        *((5, "Version 1.0"), (6, full.replace(" ", "") + "-" + weight)),
    ):
        names.setName(words, number, 3, 1, 0x409)
    font["OS/2"].usWeightClass = 700 if weight == "Bold" else 400
    font["OS/2"].fsSelection = 0x40
    font["head"].macStyle = 0
    if "CFF " in font:
        font["head"].unitsPerEm = _HAN_EM
        top = font["CFF "].cff.topDictIndex[0]
        top.FontMatrix = [1 / _HAN_EM, 0, 0, 1 / _HAN_EM, 0, 0]
        font["CFF "].cff.fontNames = [full.replace(" ", "") + "-" + weight]
        top.FullName = top.FamilyName = full
    font.save(target)
    print(f"{target.name}: {len(signs)} characters, {target.stat().st_size // 1024} kB")


def with_digits(folder: Path, weight: str, beside: str) -> TTFont:
    """Gurmukhi with the signs of no script from a font of the labels."""
    parts = (folder / f"NotoSansGurmukhi-{weight}.ttf", LABEL_FONTS / beside)
    with tempfile.TemporaryDirectory() as place:
        files = []
        for number, (part, signs) in enumerate(zip(parts, (set(GURMUKHI), SIGNS), strict=True)):
            font = TTFont(part)
            options = subset.Options(hinting=False, layout_features=["*"] if not number else [])
            options.drop_tables += ["DSIG"] if not number else ["DSIG", "GSUB", "GPOS", "GDEF"]
            cutter = subset.Subsetter(options)
            cutter.populate(unicodes=signs)
            cutter.subset(font)
            files.append(Path(place) / f"{number}.ttf")
            font.save(files[-1])
        return merge.Merger().merge([str(file) for file in files])


def main(folder: Path) -> None:
    for weight, beside in BESIDE.items():
        target = FOLDER / f"PackLineGurmukhi-{weight}.ttf"
        merged = with_digits(folder, weight, beside)
        cut(merged, set(GURMUKHI) | SIGNS, "Pack Line Gurmukhi", weight, target)
        faces = TTCollection(folder / f"NotoSansCJK-{weight}.ttc").fonts
        han = next(one for one in faces if _SC in map(one["name"].getDebugName, (1, 16)))
        signs = {sign for sign in used(Language.CHINESE) if sign > 0x2E00}
        signs |= level_1() | set(CHINESE_SIGNS)
        target = FOLDER / f"PackLineHan-{weight}.otf"
        cut(han, signs, "Pack Line Han", weight, target)


if __name__ == "__main__":
    main(Path(sys.argv[1]))
