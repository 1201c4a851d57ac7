"""What a packhouse may choose for its labels, and what is refused in words."""

import pytest

from labels.design import DESIGNS
from station.config.load import load
from station.core.product_label import ProductLabel
from tests.station.config.conftest import TODAY

PRODUCT = 'code = "SLAW-340"\n'
FRENCH = {
    "white cabbage": "chou blanc",
    "red cabbage": "chou rouge",
    "carrot": "carotte",
    "rocket": "roquette",
    "baby spinach": "jeunes pousses d'épinard",
    "iceberg lettuce": "laitue iceberg",
    "romaine lettuce": "laitue romaine",
    "celery": "céleri",
}


@pytest.fixture
def bilingual(spoil):
    """The demo packhouse with every text in French too."""
    spoil("station.toml", 'language = "en"', 'language = "en"\nsecond_language = "fr"')
    for english, french in FRENCH.items():
        spoil(
            "products.toml",
            f'name = "{english}"\n',
            f'name = "{english}"\nname_in.fr = "{french}"\n',
        )
    spoil(
        "products.toml",
        "\natmosphere = ",
        '\nname_in.fr = "Mélange"\nstorage_in.fr = "Garder au frais."\natmosphere = ',
        count=-1,
    )
    spoil(
        "products.toml",
        '[[shelf_life]]\nname_in.fr = "Mélange"\nstorage_in.fr = "Garder au frais."\n',
        "[[shelf_life]]\n",
        count=-1,
    )


def test_every_design_can_be_the_station_s_or_a_product_s_own(folder, spoil):
    spoil("products.toml", PRODUCT, PRODUCT + 'design = "pack 60 x 40"\n')
    spoil("station.toml", 'design = "pack 100 x 60"', 'design = "pack 100 x 100"')
    house = load(folder, TODAY)
    assert house.products["SLAW-340"].label.design == "pack 60 x 40"
    assert house.products["LEAF-MIX-907"].label.design == "pack 100 x 100"


def test_an_unknown_design_is_refused_with_all_there_are(spoil, refusal):
    spoil("station.toml", 'design = "pack 100 x 60"', 'design = "pack 10 x 6"')
    said = refusal()
    assert "label.design" in said
    assert all(name in said for name in DESIGNS)


def test_the_usual_label_and_the_declared_sign(folder):
    products = load(folder, TODAY).products
    usual = products["SLAW-340"].label
    assert usual == ProductLabel(packer=usual.packer)
    assert usual.packer.startswith("Packed by")
    assert products["ROCKET-SPINACH-200"].label.e_mark


def test_two_languages(folder, bilingual):
    product = load(folder, TODAY).products["SLAW-340"]
    second = product.label.second
    assert second.language == "fr"
    assert second.component("CARROT") == "carotte"
    assert product.use_by_words == "Use by / Utiliser avant"


def test_canada_takes_both_its_languages(folder, bilingual, spoil):
    spoil("station.toml", 'market = "EU"', 'market = "CA"')
    assert load(folder, TODAY).products["SLAW-340"].market == "CA"


@pytest.mark.parametrize(
    ("file", "old", "new", "words"),
    [
        ("station.toml", 'language = "en"', 'language = "vi"', "lacks ingredients, lot"),
        ("station.toml", 'market = "EU"', 'market = "CA"', "in English and French"),
        (
            "station.toml",
            'language = "en"',
            'language = "en"\nsecond_language = "en"',
            "language of the label already",
        ),
        (
            "station.toml",
            'language = "en"',
            'language = "en"\nsecond_language = "fr"',
            "component CARROT has no name in fr",
        ),
        (
            "station.toml",
            'language = "en"',
            'language = "en"\nlink_stem = "id.example.org"',
            "like https://id.example.org",
        ),
        (
            "station.toml",
            'language = "en"',
            'language = "en"\nlink_stem = "https://id.example.org"',
            "no place for a QR Code",
        ),
        ("products.toml", PRODUCT, PRODUCT + "origin = 3\n", "is not text in quotes"),
        ("products.toml", PRODUCT, PRODUCT + 'name_in = "x"\n', "is not a table"),
        ("products.toml", PRODUCT, PRODUCT + 'name_in.fr = "\\u202E"\n', "cannot be printed"),
    ],
)
def test_what_cannot_hold_is_refused_in_words(spoil, refusal, file, old, new, words):
    spoil(file, old, new)
    assert words in refusal()


def test_the_sign_stands_only_where_the_rules_know_it(spoil, refusal):
    spoil("products.toml", PRODUCT, PRODUCT + "e_mark = true\n")
    spoil("products.toml", 'rule_set = "eu-76-211"', 'rule_set = "ca-sfcr"', count=-1)
    said = refusal()
    assert "knows no sign ℮" in said
    assert "eu-76-211" in said


def test_the_sign_stands_only_from_5_g_to_10_kg(spoil, refusal):
    """Directive 76/211/EEC Art. 1."""
    spoil("products.toml", PRODUCT, PRODUCT + "e_mark = true\n")
    spoil("products.toml", 'nominal = "340 g"', 'nominal = "12 kg"')
    assert "5 g to 10000 g" in refusal()
