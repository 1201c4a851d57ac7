"""The shipped typeface: complete, measured, licensed."""

import pytest

from labels.errors import LabelError
from labels.typeface import FONT_FOLDER, Face, type_of

# From several languages a packhouse may print or show: Polish, Czech, Vietnamese, Greek, Russian,
# Ukrainian, Turkish, Maltese, and the signs of the trade.
SAMPLES = (
    "Łódź żółć ąęś",
    "příliš žluťoučký",
    "Rau trộn ướp lạnh ặẳỗữỵ",
    "Σαλάτα ΐώΰΏ",
    "Салат щёъ",
    "Їжак ґєі",
    "İıĞşğ",
    "ħġżċ",
    "℮ ≤ ≥ ± × − – — · ° % ½ € £ µ ‰ № « » “ ” ’ …",
)


@pytest.mark.parametrize("face", Face)
@pytest.mark.parametrize("sample", SAMPLES)
def test_every_face_has_the_letters_of_the_trade(face: Face, sample: str) -> None:
    type_of(face).check(sample, "Sample")


@pytest.mark.parametrize("character", ["🥬", "漢", "א", "\u0e01"])
def test_a_missing_glyph_is_an_error_that_names_it(character: str) -> None:
    with pytest.raises(LabelError) as caught:
        type_of(Face.TEXT).check("ab" + character, "Product name")
    assert caught.value.title == "Product name"
    assert f"U+{ord(character):04X}" in caught.value.detail
    assert "place 3" in caught.value.detail


@pytest.mark.parametrize("face", [Face.TEXT, Face.STRONG, Face.CODE])
def test_figures_are_tabular(face: Face) -> None:
    assert len({type_of(face).width(figure) for figure in "0123456789"}) == 1


@pytest.mark.parametrize("face", Face)
def test_measures_are_in_the_usual_order(face: Face) -> None:
    measured = type_of(face)
    assert 0.45 < measured.x_height < measured.cap_height < 0.8
    assert measured.extent(" ") == (0, 0)
    assert measured.extent("g")[0] < 0 < measured.extent("g")[1]


def test_licence_and_origin_lie_beside_the_fonts() -> None:
    assert "SIL OPEN FONT LICENSE" in (FONT_FOLDER / "OFL.txt").read_text(encoding="utf-8")
    readme = (FONT_FOLDER / "README.txt").read_text(encoding="utf-8")
    shipped = sorted(path.name for path in FONT_FOLDER.glob("*.ttf"))
    assert shipped == sorted(face.file.name for face in Face)
    assert all(name in readme for name in shipped)
