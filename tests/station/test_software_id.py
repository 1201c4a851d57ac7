"""The hash of the software, worked out again by the command everybody has."""

import subprocess
from pathlib import Path

import pytest

from station.software_id import RELEVANT, digest_of, relevant_files, software_id

ROOT = Path(__file__).parents[2]


def test_sha256sum_gives_the_same_hash():
    # GNU coreutils: sha256sum prints "<hex>  <name>" for each file.
    files = relevant_files(ROOT)
    listed = subprocess.run(["sha256sum", *files], cwd=ROOT, capture_output=True, check=True).stdout
    whole = subprocess.run(["sha256sum"], input=listed, capture_output=True, check=True).stdout
    assert whole.split()[0].decode() == software_id().digest
    assert software_id().files == len(files) > 100


def test_one_byte_of_a_relevant_file_changes_it(tmp_path):
    for name in ("a.py", "b.py"):
        (tmp_path / name).write_bytes(b"x = 1\n")
    before = digest_of(tmp_path, ("a.py", "b.py"))
    (tmp_path / "b.py").write_bytes(b"x = 2\n")
    assert digest_of(tmp_path, ("a.py", "b.py")) != before


def test_every_module_that_makes_a_weight_a_record_is_in_it():
    files = set(relevant_files(ROOT))
    for needed in (
        "drivers/frames/scp0499.py",
        "station/core/metrology/verdict.py",
        "station/line/cycle.py",
        "station/store/writer.py",
        "station/core/rights.py",
    ):
        assert needed in files
    assert not any(name.startswith("station/screens/") for name in files)


def test_a_missing_part_is_named(tmp_path):
    with pytest.raises(FileNotFoundError, match=RELEVANT[0]):
        relevant_files(tmp_path)
