"""From the line's state to what a screen may show: the one verb, the amount, the reason."""

from __future__ import annotations

from station.core.mass import Mass, MassError
from station.core.metrology.verdict import (
    Verdict,
    classify,
    to_add,
    to_take_out_to_target,
)
from station.core.product import PackMode
from station.core.run import Run
from station.line.cycle_kept import changed_words
from station.line.cycle_state import Cycle, indication, load_threshold, net_of, order_done
from station.line.state import LastPack, LineState, Phase, Shown, Verb

_Said = tuple[Verb, Mass | None, str]


def line_state(cycle: Cycle) -> LineState:
    """Return what a screen may show of ``cycle``."""
    shown = _shown(cycle)
    verb, amount, because = _say(cycle, shown)
    last = None
    if cycle.last is not None:
        net = cycle.last.draft.weighing.net
        last = LastPack(cycle.last.serial, net, cycle.last_is_good)
    return LineState(
        phase=cycle.phase,
        verb=verb,
        amount=amount,
        because=because,
        cycle=cycle.number,
        shown=shown,
        run=cycle.run,
        tally=cycle.tally,
        last=last,
        port=cycle.port,
        closed=cycle.closed if cycle.run is not None else (),
        due=cycle.due,
        seals=cycle.seals,
    )


def _shown(cycle: Cycle) -> Shown | None:
    reading, run = cycle.reading, cycle.run
    if reading is None:
        return None
    net, spread, verdict = None, None, None
    if not cycle.trouble and run is not None:
        net = net_of(reading, run).in_unit(run.product.nominal.unit)
        spread = Mass.of(reading.spread, reading.unit).in_unit(net.unit)
        if indication(reading) >= load_threshold(run, cycle.rules):
            verdict = classify(net, run.window)
    return Shown(
        digits=reading.digits,
        unit=reading.unit,
        net=net,
        steady=reading.steady,
        spread=spread,
        verdict=verdict,
        seen_at_ns=reading.seen_at_ns,
    )


def _say(cycle: Cycle, shown: Shown | None) -> _Said:
    if cycle.phase is Phase.STOPPED:
        return Verb.CALL_LEAD, None, cycle.stop
    if cycle.trouble:
        return Verb.NO_READING, None, cycle.trouble
    if cycle.run is None or shown is None:
        return Verb.START_RUN, None, "no run is open: the lead starts one"
    if cycle.closed and cycle.phase in (Phase.CLEAR_PAN, Phase.READY, Phase.LOADED):
        return Verb.CALL_LEAD, None, cycle.closed[0]
    if cycle.phase is Phase.LOADED:
        return _guide(cycle, cycle.run, shown)
    if cycle.phase is Phase.LIFT and not cycle.last_is_good:
        reason = "" if cycle.last is None else cycle.last.draft.reason
        return Verb.SET_ASIDE, None, f"not labelled: {reason}" if reason else "label is void"
    if cycle.phase is Phase.LIFT and (words := changed_words(cycle)):
        return Verb.SET_ASIDE, None, words
    if cycle.phase is Phase.READY and order_done(cycle):
        return Verb.ORDER_DONE, None, f"{cycle.tally.good} bags are packed: the lead ends the run"
    if cycle.phase is Phase.CLEAR_PAN:
        return _clear(cycle, cycle.run, shown)
    return _PLAIN[cycle.phase], None, ""


_PLAIN = {
    Phase.CLOSED: Verb.START_RUN,
    Phase.READY: Verb.BAG_ON,
    Phase.RECORDING: Verb.SEAL,
    Phase.LABELLING: Verb.SEAL,
    Phase.LIFT: Verb.LIFT_BAG,
}


def _clear(cycle: Cycle, run: Run, shown: Shown) -> _Said:
    """The pan must show zero: take the load off, or wipe it where only a residue is left."""
    assert cycle.reading is not None
    gross = indication(cycle.reading)
    if gross >= load_threshold(run, cycle.rules):
        return Verb.EMPTY_PAN, None, "the pan must be empty before the next bag counts"
    if shown.steady and not cycle.reading.at_zero:
        return Verb.WIPE_PAN, None, f"the empty pan shows {gross}: wipe it, then zero the scale"
    return Verb.EMPTY_PAN, None, ""


def _guide(cycle: Cycle, run: Run, shown: Shown) -> _Said:
    """A bag is on the pan: how much to add or take out, or wait."""
    net, window = shown.net, run.window
    assert net is not None
    assert cycle.load is not None
    if cycle.load.aside:
        return Verb.WAIT, None, f"setting aside: {cycle.load.aside}"
    verdict = classify(net, window)
    if verdict is Verdict.IN_WINDOW or run.product.mode is PackMode.CHECK:
        return Verb.WAIT, None, ""
    if verdict is Verdict.OVER:
        return Verb.TAKE_OUT, to_take_out_to_target(net, window), ""
    return Verb.ADD, to_add(net, window), ""


def units_fit(run: Run) -> str:
    """Say why a run's units cannot be weighed on its scale; empty when they can.

    The tare goes into the scale's unit and the net into the unit of the nominal quantity; both
    must be exact.
    """
    try:
        one = Mass.of(1, run.unit)
        run.product.bag.tare.in_unit(run.unit)
        one.in_unit(run.product.nominal.unit)
    except MassError as fault:
        return f"product {run.product.code} cannot run on this scale: {fault}"
    return ""
