"""The designs of cases, pallets and reject tickets: frames in mm."""

from labels.frames import Frame, FrameDesign, Part
from labels.layout import Box
from labels.typeface import Face

REJECT_100_BY_60 = FrameDesign(
    "reject 100 x 60",
    100.0,
    60.0,
    (
        Frame(Part.PLATE, "banner", Box(3, 2.5, 94, 11.5), cap=7.5, least=5.0),
        Frame(Part.FACT, "reason", Box(3.5, 16.5, 70, 9.5), cap=4.8, least=2.4),
        Frame(Part.MATRIX, "code", Box(77, 17, 20, 20), module_dots=(8, 7, 6, 5, 4, 3)),
        Frame(Part.FACT, "weight", Box(3.5, 29, 29, 9.5), cap=4.8, least=2.4),
        Frame(Part.FACT, "verdict", Box(34.5, 29, 41, 9.5), 2.5, 1.8, 2, Face.NARROW_STRONG),
        Frame(Part.FACT, "serial", Box(3.5, 42, 29, 7), cap=2.8, least=1.5, face=Face.CODE),
        Frame(Part.FACT, "lot", Box(34.5, 42, 29, 7), cap=2.8, least=1.5, face=Face.CODE),
        Frame(Part.FACT, "time", Box(65.5, 42, 31.5, 7), 2.8, 1.6, 1, Face.CODE),
        Frame(Part.TEXT, "product", Box(3.5, 53, 93, 4.5), cap=2.5, least=1.6, face=Face.NARROW),
    ),
)

REJECT_60_BY_40 = FrameDesign(
    "reject 60 x 40",
    60.0,
    40.0,
    (
        Frame(Part.PLATE, "banner", Box(2, 1.75, 56, 7.5), cap=4.6, least=3.5),
        Frame(Part.FACT, "reason", Box(2.25, 11, 40, 6.4), cap=2.8, least=1.8),
        Frame(Part.MATRIX, "code", Box(43.5, 11, 14.5, 14.5), module_dots=(6, 5, 4, 3)),
        Frame(Part.FACT, "weight", Box(2.25, 19, 17.5, 6.4), cap=2.8, least=1.6),
        Frame(Part.FACT, "verdict", Box(20.5, 19, 22.5, 7), 1.8, 1.3, 2, Face.NARROW_STRONG),
        Frame(Part.FACT, "serial", Box(2.25, 28, 17, 5.2), cap=1.9, least=1.2, face=Face.CODE),
        Frame(Part.FACT, "lot", Box(20.5, 28, 16, 5.2), cap=1.9, least=1.2, face=Face.CODE),
        Frame(Part.FACT, "time", Box(37.5, 28, 20.5, 5.2), 1.9, 1.2, 1, Face.CODE),
        Frame(Part.TEXT, "product", Box(2.25, 35.3, 55, 3.2), cap=1.8, least=1.3, face=Face.NARROW),
    ),
)

CASE_100_BY_100 = FrameDesign(
    "case 100 x 100",
    100.0,
    100.0,
    (
        Frame(Part.TEXT, "product", Box(5, 2.5, 68, 13), cap=4.8, least=3.4, lines=2),
        Frame(Part.MATRIX, "all", Box(75, 4, 20.5, 20.5), module_dots=(6, 5, 4, 3)),
        Frame(Part.FACT, "contents", Box(5, 17.5, 68, 8.5), cap=4.4, least=2.6),
        Frame(Part.SLAB, "date", Box(5, 29, 90, 9.5), cap=4.8, least=2.8),
        Frame(Part.FACT, "lot", Box(5, 42, 42, 7), cap=3.0, least=1.6, face=Face.CODE),
        Frame(Part.FACT, "serials", Box(49, 42, 46, 7), cap=3.0, least=1.5, face=Face.CODE),
        Frame(Part.TEXT, "packer", Box(5, 53, 90, 6.5), 2.0, 1.6, 2, Face.NARROW),
        Frame(Part.LINEAR, "sscc", Box(1, 61.5, 98, 35.5), module_dots=(4,)),
    ),
)

PALLET_100_BY_150 = FrameDesign(
    "pallet 100 x 150",
    100.0,
    150.0,
    (
        Frame(Part.TEXT, "packer", Box(5, 4.5, 90, 6.5), 2.2, 1.6, 2, Face.NARROW),
        Frame(Part.TEXT, "product", Box(5, 12.5, 90, 14), cap=6.4, least=3.4, lines=2),
        Frame(Part.FACT, "contents", Box(5, 27.5, 60, 8.5), cap=4.2, least=2.6),
        Frame(Part.FACT, "weight", Box(68, 27.5, 27, 8.5), cap=4.2, least=2.4),
        Frame(Part.SLAB, "date", Box(5, 39.5, 90, 10.5), cap=5.2, least=2.8),
        Frame(Part.FACT, "lot", Box(5, 54, 42, 7.5), cap=3.2, least=1.6, face=Face.CODE),
        Frame(Part.FACT, "number", Box(49, 54, 46, 7.5), cap=3.2, least=2.0, face=Face.CODE),
        Frame(Part.LINEAR, "content code", Box(1, 65.5, 98, 21), module_dots=(4, 3)),
        Frame(Part.LINEAR, "date code", Box(1, 89.5, 98, 21), module_dots=(4, 3, 2)),
        Frame(Part.LINEAR, "sscc", Box(1, 113.5, 98, 35), module_dots=(4,)),
    ),
)

FRAME_DESIGNS = {
    design.name: design
    for design in (REJECT_100_BY_60, REJECT_60_BY_40, CASE_100_BY_100, PALLET_100_BY_150)
}
