"""What the centre lists closes acceptance at once; a backlog is told where somebody is needed."""

from dataclasses import replace

import pytest

from station.core.blend_change import BlendChange, with_change
from station.core.facts import FactRecord
from station.core.line_lots import LotMove, Move, move_fact
from station.core.lot_set import LotSet, LotUse
from station.line.centre_duty import CentreDuty, Listed, Stop
from tests.station.line.scenario import make_moment, make_run

NOW = make_moment().utc
RUN = make_run()
LOTS = {lot.code: lot for lot in RUN.lots}


class Centre:
    def __init__(self, *stops: Stop, needs: str = "") -> None:
        self.stops, self.words = stops, needs
        self.duty = CentreDuty(lambda: self.stops, lambda now: self.words, LOTS)


@pytest.mark.parametrize(
    ("stop", "words"),
    [
        (Stop(Listed.LOT, "ROM-1", "listeria found"), "lot ROM-1 (listeria found): take it off"),
        (Stop(Listed.PRODUCT, "HARBOUR-250", "new recipe"), "HARBOUR-250 (new recipe): end the"),
        (Stop(Listed.COMPONENT, "CAR", "metal"), "component CAR (metal): take it off"),
        (Stop(Listed.SUPPLIER, "Tarn Roots", "audit"), "supplier Tarn Roots (audit): take it off"),
    ],
)
def test_what_is_listed_closes_acceptance(stop, words):
    centre = Centre()
    centre.duty.opened(RUN, NOW)
    assert centre.duty.closing(NOW) == ""
    centre.stops = (Stop(Listed.LOT, "OTHER-9", "elsewhere"), stop)
    assert words in centre.duty.closing(NOW)
    centre.stops = ()
    assert centre.duty.closing(NOW) == ""


def test_nothing_is_closed_without_a_run():
    centre = Centre(Stop(Listed.LOT, "ROM-1", "listeria found"))
    assert centre.duty.closing(NOW) == ""
    centre.duty.opened(replace(RUN, lot_set=LotSet.of((LotUse("CAR", "CAR-7"),))), NOW)
    assert centre.duty.closing(NOW) == ""


def test_a_lot_that_left_the_run_s_set_closes_nothing_more():
    centre = Centre(Stop(Listed.LOT, "ROM-1", "listeria found"))
    centre.duty.opened(RUN, NOW)
    assert centre.duty.closing(NOW)
    new = LotSet.of((LotUse("ROM", "ROM-2"), LotUse("CAR", "CAR-7")))
    moved = move_fact(LotMove(Move.LOADED, "ROM-2", "ROM"), "m1", "A", RUN.id)
    changed = with_change(moved, BlendChange(new, "A2632902", RUN.dating))
    centre.duty.noted(FactRecord(changed, make_moment(), "P01", 5))
    assert centre.duty.closing(NOW) == ""


def test_the_lead_hears_of_the_way_to_the_centre_only_when_somebody_is_needed():
    centre = Centre()
    centre.duty.opened(RUN, NOW)
    assert centre.duty.due(NOW) is None
    centre.words = "nothing reached the centre for 30 hours"
    notice = centre.duty.due(NOW)
    assert notice is not None
    assert notice.words == centre.words
