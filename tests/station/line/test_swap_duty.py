"""The line is shut while another scale stands there than the one taken into use."""

from dataclasses import replace

from station.core.facts import FactRecord
from station.core.metrology.scale_suitability import Level
from station.core.scale_swap import ScaleIdentity, swap_fact
from station.line.swap_duty import SwapDuty
from tests.station.core.test_scale_swap import NEW, NOW, OLD, SWAP, kept

AT = NOW.utc


def test_scale_found_first_is_known_until_another_comes() -> None:
    duty = SwapDuty()
    assert duty.closing(AT) == ""
    duty.found(ScaleIdentity())
    duty.found(OLD)
    assert duty.closing(AT) == ""
    duty.found(NEW)
    assert "serial 1002" in duty.closing(AT)
    assert "in use is Wharfe W3 serial 1001" in duty.closing(AT)
    duty.noted(kept(SWAP))
    assert duty.closing(AT) == ""
    assert duty.last is not None
    duty.found(OLD)
    assert "SERVICE (F9), SWAP" in duty.closing(AT)


def test_scale_on_record_is_known_after_a_restart() -> None:
    duty = SwapDuty([kept(SWAP)])
    duty.found(OLD)
    assert duty.closing(AT)
    duty.found(NEW)
    assert duty.closing(AT) == ""


def test_refused_scale_opens_nothing() -> None:
    duty = SwapDuty()
    duty.found(OLD)
    duty.found(NEW)
    unfit = replace(SWAP, fitness={"HERBS": Level.REFUSE})
    duty.noted(FactRecord(swap_fact(unfit, "u2"), NOW, "M01", 8))
    assert duty.closing(AT)
    assert duty.due(AT) is None


def test_scale_found_first_is_known_by_what_it_says_although_its_converter_came_first() -> None:
    """The converter stays when its cable is put into another scale."""
    duty, device = SwapDuty(), "12ab:0034/A1"
    duty.found(ScaleIdentity(device=device))
    duty.found(replace(OLD, device=device))
    assert duty.closing(AT) == ""
    duty.found(ScaleIdentity(device=device))
    assert duty.closing(AT) == ""
    duty.found(replace(NEW, device=device))
    assert "serial 1002" in duty.closing(AT)
    duty.found(replace(OLD, device=device))
    assert duty.closing(AT) == ""


def test_scale_of_which_a_line_was_lost_at_first_is_known_by_all_it_says() -> None:
    duty = SwapDuty()
    duty.found(replace(OLD, serial=""))
    duty.found(OLD)
    duty.found(replace(OLD, serial="", model=""))
    assert duty.closing(AT) == ""
    duty.found(NEW)
    assert "in use is Wharfe W3 serial 1001" in duty.closing(AT)
