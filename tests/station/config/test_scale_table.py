"""``[scale]``: the protocols, and the description of a scale's lines with all its refusals."""

from pathlib import Path
from shutil import copy

import pytest

import drivers.frames
from station.config.load import load
from tests.station.config.conftest import TODAY

SHIPPED = Path(drivers.frames.__path__[0]) / "descriptions"
PROTOCOL = 'protocol = "scp0499"'


@pytest.fixture
def described(folder, spoil):
    """Settings whose scale is described; give a function that names the file."""
    copy(SHIPPED / "heron.toml", folder / "line.toml")

    def name(text: str) -> None:
        spoil("station.toml", PROTOCOL, f'protocol = "described"\ndescription = "{text}"')

    return name


def test_described_scale_is_loaded_with_its_description(folder, described):
    described("line.toml")
    scale = load(folder, TODAY).settings.scale
    assert scale.protocol == "described"
    assert scale.description.name == "Heron line (invented)"


def test_usual_scale_has_no_description(folder):
    assert load(folder, TODAY).settings.scale.description is None


def test_usb_weighing_device_is_a_protocol(folder, spoil):
    spoil("station.toml", PROTOCOL, 'protocol = "hid"')
    spoil("station.toml", 'url = "/dev/ttyUSB0"', 'url = "hid://"')
    assert load(folder, TODAY).settings.scale.protocol == "hid"


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("none.toml", "no such file"),
        ("/etc/hostname", "lies elsewhere"),
        ("../line.toml", "lies elsewhere"),
        ("people.toml", "name: is missing"),
    ],
)
def test_description_that_cannot_be_used(described, refusal, text, words):
    described(text)
    said = refusal()
    assert "scale.description" in said
    assert words in said


def test_link_that_leads_elsewhere_is_refused(folder, described, refusal, tmp_path):
    (tmp_path / "away.toml").write_bytes((SHIPPED / "heron.toml").read_bytes())
    (folder / "linked.toml").symlink_to(tmp_path / "away.toml")
    described("linked.toml")
    assert "lies elsewhere" in refusal()


def test_description_that_fails_its_own_example_is_refused(folder, described, refusal):
    text = (folder / "line.toml").read_text(encoding="utf-8")
    (folder / "line.toml").write_text(text.replace('"254.0"', '"255.0"'), encoding="utf-8")
    described("line.toml")
    assert "value is read as '254.0', not '255.0'" in refusal()


def test_described_without_a_description(spoil, refusal):
    spoil("station.toml", PROTOCOL, 'protocol = "described"')
    assert "scale.description" in refusal()


def test_description_without_described(spoil, refusal):
    spoil("station.toml", PROTOCOL, f'{PROTOCOL}\ndescription = "line.toml"')
    assert 'goes with protocol = "described" only' in refusal()


def test_unit_that_the_description_does_not_have(spoil, described, refusal):
    described("line.toml")
    spoil("station.toml", 'unit = "g"', 'unit = "kg"')
    assert "no unit of line.toml" in refusal()


def test_unknown_protocol(spoil, refusal):
    spoil("station.toml", PROTOCOL, 'protocol = "morse"')
    assert "scp0499, described, hid" in refusal().replace('"', "")
