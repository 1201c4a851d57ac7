"""Hashes alone stand in the files, for their owner alone; a PIN fits its person and nobody else."""

import hashlib
import hmac
import json
import re
import stat
import subprocess
import sys
from pathlib import Path

import pytest
from argon2.low_level import Type, hash_secret_raw

from station.access.credentials import Credentials
from station.core.pins import PinError
from station.errors import EnvironmentFault

PIN, BADGE = "482913", "BADGE-7731-QH"


@pytest.fixture
def kept(tmp_path):
    made = Credentials(tmp_path)
    made.set_pin("L01", PIN)
    return made


def test_a_pin_is_hashed_as_rfc_9106_recommends_for_64_mib(kept, tmp_path):
    # RFC 9106 section 4, second recommended option: t=3, p=4, m=2**16 KiB, 128-bit salt.
    written = json.loads((tmp_path / "access" / "credentials.json").read_text())
    assert re.match(r"\$argon2id\$v=19\$m=65536,t=3,p=4\$", written["people"]["L01"]["pin"])


def test_no_file_holds_the_pin_and_only_the_owner_reads_them(kept, tmp_path):
    kept.set_badge("L01", BADGE)
    for file in (tmp_path / "access").iterdir():
        assert stat.S_IMODE(file.stat().st_mode) == 0o600
        assert PIN.encode() not in file.read_bytes()
        assert BADGE.encode() not in file.read_bytes()


def test_a_pin_fits_its_person_alone_and_after_a_restart(kept, tmp_path):
    kept.set_pin("L02", "739164")
    again = Credentials(tmp_path)
    assert again.pin_fits("L01", PIN)
    assert not again.pin_fits("L02", PIN)
    assert not again.pin_fits("L01", "739164")
    assert not again.pin_fits("P01", PIN)


def test_a_badge_is_the_published_function_of_pepper_and_code(kept, tmp_path):
    kept.set_badge("L01", BADGE)
    pepper = (tmp_path / "access" / "pepper").read_bytes()
    salt = hmac.new(pepper, b"badge salt\x00", hashlib.sha256).digest()[:16]
    code = hmac.new(pepper, b"badge\x00" + BADGE.encode(), hashlib.sha256).digest()
    written = json.loads((tmp_path / "access" / "credentials.json").read_text())
    assert written["people"]["L01"]["badge"] == (
        hash_secret_raw(code, salt, 3, 65536, 4, 32, Type.ID).hex()
    )
    assert kept.owner_of(BADGE) == "L01"
    assert kept.owner_of("BADGE-0000-QH") == ""


def test_two_people_never_have_one_badge(kept):
    kept.set_badge("L01", BADGE)
    with pytest.raises(PinError, match="that of L01"):
        kept.set_badge("L02", BADGE)


def test_who_is_disabled_signs_no_more_and_a_return_needs_a_new_pin(kept, tmp_path):
    kept.set_disabled("L01", True)
    assert not Credentials(tmp_path).can_sign("L01")
    assert not kept.pin_fits("L01", PIN)
    kept.set_disabled("L01", False)
    assert not kept.can_sign("L01")


def test_without_the_pepper_the_hashes_are_of_no_use(kept, tmp_path):
    (tmp_path / "access" / "pepper").unlink()
    with pytest.raises(EnvironmentFault, match="pepper is missing"):
        Credentials(tmp_path)


def test_a_damaged_file_is_named(kept, tmp_path):
    (tmp_path / "access" / "credentials.json").write_text("{")
    with pytest.raises(EnvironmentFault, match=r"credentials\.json is damaged"):
        Credentials(tmp_path)


def test_a_damaged_hash_says_so(kept, tmp_path):
    file = tmp_path / "access" / "credentials.json"
    file.write_text(file.read_text().replace("$argon2id$v=19", "$argon2id$v=x"))
    with pytest.raises(ValueError, match="PIN of L01 is damaged"):
        Credentials(tmp_path).pin_fits("L01", PIN)


WITH_LITTLE_MEMORY = """
import resource, sys
from pathlib import Path
from station.access.credentials import Credentials
from station.errors import EnvironmentFault

kept = Credentials(Path(sys.argv[1]))
pages = int(Path("/proc/self/statm").read_text(encoding="ascii").split()[0])
few = pages * resource.getpagesize() + 32 * 2**20
resource.setrlimit(resource.RLIMIT_AS, (few, resource.RLIM_INFINITY))
try:
    getattr(kept, sys.argv[2])(*sys.argv[3:])
except EnvironmentFault as refused:
    print(refused)
"""
"""Argon2 wants 64 MiB at once. In a process of its own: an older one may have them free already."""


@pytest.mark.parametrize(
    "asked",
    [("pin_fits", "L01", PIN), ("owner_of", BADGE), ("set_pin", "L02", PIN)],
    ids=["PIN", "badge", "new PIN"],
)
def test_too_little_memory_is_not_taken_for_a_damaged_pin(kept, tmp_path, asked):
    kept.set_badge("L01", BADGE)
    checker = subprocess.run(
        [sys.executable, "-c", WITH_LITTLE_MEMORY, str(tmp_path), *asked],
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
        cwd=Path(__file__).parents[3],
    )
    assert re.search(r"now, try again: Memory alloc", checker.stdout)
    assert kept.pin_fits("L01", PIN)


def test_a_pin_that_cannot_be_kept_leaves_the_old_one(kept, tmp_path):
    with pytest.raises(PinError):
        kept.set_pin("L01", "123456")
    assert kept.pin_fits("L01", PIN)
