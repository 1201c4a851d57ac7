"""Recorded scales through the whole chain: what was on the pan is known, and what is captured.

The recordings were made of the bench scale on a real tty, with the link's own recorder.
"""

from pathlib import Path

import pytest

from drivers.connection import LinkRules
from drivers.link_items import LinkDegraded
from drivers.recording import read_recording
from drivers.steady import Reading
from drivers.zero_gate import PRESS_PAN
from tests.drivers.chain import Chain, Tape

FOLDER = Path(__file__).parents[1] / "data" / "recordings"
RULES = LinkRules(discover=True)


def played(name: str) -> tuple[Chain, list[str]]:
    tape = Tape()
    for chunk in read_recording(FOLDER / name):
        tape.connections[0].append((chunk.at_us // 1000, chunk.data))
    chain = Chain(rules=RULES)
    return chain, chain.play(tape)


def test_two_bags() -> None:
    """6 g of bag with 252 g, then 6 g with 261 g."""
    _, captured = played("two-bags.rec")
    assert captured == ["258", "267"]


def test_noise_while_a_bag_stands() -> None:
    """Six bursts within three seconds disturb the line for ten: no bag is taken, and it is said."""
    chain, captured = played("noise.rec")
    assert captured == []
    assert ["damaged" in item.why for item in chain.items if isinstance(item, LinkDegraded)] == [
        True
    ]


def test_load_hidden_by_a_power_cycle() -> None:
    """106 g were taken for zero, 258 g poured on them: the bag is never taken for one of 258 g."""
    chain, captured = played("hidden-load.rec")
    shown = {item.digits for item in chain.items if isinstance(item, Reading) and item.fault}
    assert captured == []
    assert "258" in shown
    assert any(isinstance(item, Reading) and item.fault == PRESS_PAN for item in chain.items)


@pytest.mark.parametrize("path", sorted(FOLDER.glob("*.rec")), ids=lambda path: path.name)
def test_recording_is_small_and_whole(path: Path) -> None:
    assert 1_000 < path.stat().st_size < 40_000
    assert sum(len(chunk.data) for chunk in read_recording(path)) > 1_000
