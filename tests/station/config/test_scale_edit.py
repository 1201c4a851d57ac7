"""station.toml gets a described scale in place; what people wrote around it stays."""

import tomllib

import pytest

from station.app.places import demo_settings
from station.config.scale_edit import use_description
from station.errors import BadInput


def test_demo_settings_get_a_described_scale_and_keep_every_remark() -> None:
    before = (demo_settings() / "station.toml").read_text(encoding="utf-8")
    after = use_description(before, "heron.toml")
    due = tomllib.loads(before)
    due["scale"] |= {"protocol": "described", "description": "heron.toml"}
    assert tomllib.loads(after) == due
    changed = [line for line in after.split("\n") if line not in before.split("\n")]
    assert len(changed) == 2
    assert changed[0].startswith('protocol = "described"')
    assert "# or" in changed[0]
    again = use_description(after, "tern.toml")
    assert tomllib.loads(again)["scale"]["description"] == "tern.toml"
    assert use_description(again, "heron.toml") == after


def test_line_ends_of_another_system_stay() -> None:
    text = '[scale]\r\nprotocol = "hid"\r\n[scale.port]\r\nurl = "x"\r\n'
    after = use_description(text, "a.toml")
    assert tomllib.loads(after)["scale"]["description"] == "a.toml"
    assert after.count("\r\n") >= 3


@pytest.mark.parametrize(
    "text",
    [
        "",
        "[scale]\nunit = 'g'\n",
        "scale = { protocol = 'hid' }\n",
        "[scale]\nprotocol = '''hid'''\n",
        "[scale]\n\"protocol\" = 'hid'\n",
        "[scale\n",
    ],
)
def test_text_the_station_cannot_change_is_left_to_a_person(text: str) -> None:
    with pytest.raises(BadInput, match=r'write under \[scale\]: protocol = "described"'):
        use_description(text, "a.toml")
