import pytest

from station.core.facts import FACT_KINDS, Fact
from station.core.journal import EntryKind, JournalError


def test_a_fact_becomes_an_entry_body_that_names_everything():
    fact = Fact(EntryKind.SCALE_CHECK, "u1", "bench 1", "good", "r1", {"loads": [1, 2]})
    assert fact.body() == {
        "uid": "u1",
        "subject": "bench 1",
        "result": "good",
        "run": "r1",
        "details": {"loads": [1, 2]},
    }


@pytest.mark.parametrize("kind", sorted(set(EntryKind) - FACT_KINDS))
def test_a_kind_with_a_form_of_its_own_is_no_fact(kind):
    with pytest.raises(JournalError, match="form of its own"):
        Fact(kind, "u1", "something", "good")


@pytest.mark.parametrize(("uid", "subject"), [("", "bench 1"), ("u1", "")])
def test_a_fact_needs_a_name_and_something_it_is_about(uid, subject):
    with pytest.raises(JournalError, match="needs a uid and a subject"):
        Fact(EntryKind.HOLD, uid, subject, "held")
