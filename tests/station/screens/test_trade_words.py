"""Words of the trade in every language: one thing has one word, and a button has one name."""

import re

import pytest

from station.core.languages import Language
from tests.station.screens.messages import TRANSLATED, file_of, read, sources

_HOLE = re.compile(r"\{\w+\}")
_NAMED = re.compile(r"(?<![\w{])[A-Z][A-Z-]+(?: [A-Z][A-Z-]+)*(?![\w}])")
"""Words in capitals amid a sentence, as buttons have them."""


@pytest.mark.parametrize("language", TRANSLATED)
def test_a_sentence_names_a_button_as_the_button_is_named(language: Language) -> None:
    words = {source: words for source, (words, _) in read(file_of(language)).items()}
    named = [
        (source, button)
        for source in sources()
        if not _HOLE.sub("", source).isupper()
        for button in _NAMED.findall(source)
        if button in words
    ]
    assert len(named) > 20
    wrong = {
        source: words[button]
        for source, button in named
        if words[button].upper() not in words[source].upper()
    }
    assert not wrong


APART = (
    *(("BAGS", "CASES", "PALLETS"), ("BIN", "CASE", "PALLET"), ("RUNS", "SERIALS", "LOTS")),
    *(("ADD", "TAKE OUT", "SET ASIDE"), ("BAG ON", "LIFT BAG", "EMPTY PAN", "WIPE PAN", "SEAL")),
    *(("HOLD", "RELEASE", "DUMP"), ("RECORD", "ENTER", "HISTORY"), ("RETURN", "WASTE", "HOLD")),
    ("DUMP", "DUMPED"),
    ("SAFE", "THIN", "FAILING"),
    ("Use by", "Best before"),
    *(("LABEL ROLL", "INPUT LOT", "BLEND LOT"), ("LEAD", "MANAGER", "PACKER", "INSPECTOR")),
)
"""What stands together on a screen, or would be done wrong if it were taken for another."""
RIVALS = {
    Language.SPANISH: ("suelo", "cajón"),
    Language.FRENCH: ("sachet", "gérant", "scell", "consommer avant"),
    Language.PUNJABI: ("ਥੈਲ", "ਪੈਨ ", "ਝੰਡ", "ਪਹਿਲਾਂ ਵਰਤੋ"),
    Language.VIETNAMESE: ("dưới sàn", "trên sàn"),
    Language.CHINESE: ("重块", "切割", "加载"),
    Language.TAGALOG: ("supot", "plato", "bandila", "panahon", "gamitin bago"),
    Language.PORTUGUESE: (
        "gerente",
        "série de saco",
    ),
}
"""Other words for bag, seal, bin, pan, floor, serial, flag, manager or weight than the one that the
language has chosen: two words for one thing are two things to whoever reads them. And "before" for
a use-by date, which is itself the last day (Regulation (EU) No 1169/2011, article 24)."""
FLOOR_OF_THE_ROOM = "no old product on line, pan or floor"


@pytest.mark.parametrize("language", TRANSLATED)
def test_one_thing_has_one_word_and_two_things_have_two(language: Language) -> None:
    words = {source: words for source, (words, _) in read(file_of(language)).items()}
    same = [group for group in APART if len({words[one] for one in group}) < len(group)]
    assert not same
    known = {source: one for source, one in words.items() if source != FLOOR_OF_THE_ROOM}
    rivals = {
        source: one
        for source, one in known.items()
        for rival in RIVALS[language]
        if rival in one.lower()
    }
    assert not rivals
