"""A form filled in gives the bytes RFC 8785 asks for, as the general writer gives them."""

from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core.entry_form import TEXT, WORD, EntryForm, utc_of
from station.core.journal import Entry, EntryKind, JournalError, canonical, written
from station.core.pack import Moment

words = st.text("abcXYZ019 .-/%", max_size=12)
numbers = st.integers(-(2**53) + 1, 2**53 - 1)
values = st.recursive(
    st.none() | st.booleans() | numbers | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(words, inner, max_size=3),
    max_leaves=6,
)
texts = st.text(st.characters(exclude_categories=["Cs"]), max_size=12)


@given(
    shared=st.dictionaries(st.text("abcde", min_size=1, max_size=3), values, max_size=5),
    word=words,
    number=numbers,
    text=texts,
    other=values,
    who=texts,
    zone=words,
    epoch=st.integers(1, 2**63 - 1),
)
def test_it_writes_what_the_general_writer_writes(
    shared, word, number, text, other, who, zone, epoch
):
    at = Moment(datetime(2026, 3, 4, 7, 8, 9, 10, UTC), -90, zone, 2**60)
    gaps = {"g1": WORD, "g2": TEXT, "g3": TEXT, "g4": TEXT}
    form = EntryForm(("QH", 'A"1', epoch), EntryKind.PACK, who, zone, -90, shared, gaps)
    body = {**shared, "g1": word, "g2": number, "g3": text, "g4": other}
    entry = Entry("QH", 'A"1', epoch, 7, EntryKind.PACK, at, who, body)
    filled = form.bytes_of(7, utc_of(at), 2**60, (word, str(number), written(text), written(other)))
    assert filled == canonical(entry)


def test_what_no_journal_keeps_is_refused_when_the_form_is_made():
    with pytest.raises(JournalError, match="binary float"):
        EntryForm(("QH", "A1", 1), EntryKind.PACK, "p", "UTC", 0, {"net": 0.25}, {})
