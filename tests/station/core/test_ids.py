from dataclasses import replace
from datetime import UTC, datetime, timedelta, timezone
from uuid import RFC_4122

import pytest

from station.core.ids import new_uid, uuid7
from station.core.pack import Moment


def test_matches_the_example_of_the_standard():
    # RFC 9562 Appendix A.6: Tuesday, February 22, 2022 2:22:22.00 PM GMT-05:00,
    # rand_a = 0xCC3, rand_b = 0b01, 0x8C4DC0C0C07398F
    at = datetime(2022, 2, 22, 14, 22, 22, tzinfo=timezone(-timedelta(hours=5)))
    random = bytes.fromhex("0CC318C4DC0C0C07398F")
    assert str(uuid7(at, random)) == "017f22e2-79b0-7cc3-98c4-dc0c0c07398f"


def test_version_and_variant_stand_whatever_the_random_bytes():
    for filler in (0x00, 0xFF):
        made = uuid7(datetime(2026, 3, 4, tzinfo=UTC), bytes([filler] * 10))
        assert (made.version, made.variant) == (7, RFC_4122)


@pytest.mark.parametrize(
    ("at", "random"),
    [
        (datetime(2026, 3, 4), bytes(10)),  # noqa: DTZ001  naive on purpose
        (datetime(1969, 12, 31, tzinfo=UTC), bytes(10)),
        (datetime(2026, 3, 4, tzinfo=UTC), bytes(9)),
    ],
)
def test_refuses_a_naive_or_too_early_time_and_too_few_bytes(at, random):
    with pytest.raises(ValueError, match=r"aware time|10 random bytes"):
        uuid7(at, random)


def test_a_new_id_is_the_uuid_of_the_systems_random_bytes(monkeypatch):
    at = Moment(datetime(2026, 3, 4, 7, 8, 9, 987654, UTC), 60, "Europe/Madrid", 0)
    for random in (bytes(10), b"\xff" * 10, *(bytes([n]) * 10 for n in range(7, 256, 17))):
        monkeypatch.setattr("os.urandom", lambda count, made=random: made[:count])
        assert new_uid(at) == str(uuid7(at.utc, random))
    with pytest.raises(ValueError, match="1970"):
        new_uid(replace(at, utc=datetime(1969, 12, 31, tzinfo=UTC)))


def test_new_ids_of_one_moment_differ_and_share_the_time():
    at = Moment(datetime(2026, 3, 4, 7, tzinfo=UTC), 60, "Europe/Madrid", 0)
    one, other = new_uid(at), new_uid(at)
    assert one != other
    assert one[:13] == other[:13]
