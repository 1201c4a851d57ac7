"""States of an invented line, one for each picture a screen must show."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from decimal import Decimal

from station.core.dating import Dating
from station.core.lot_set import LotSet, LotUse
from station.core.lots import InputLot, LotStatus
from station.core.mass import Mass, Unit
from station.core.metrology.rule_sets.registry import rule_set
from station.core.metrology.verdict import (
    Verdict,
    Window,
    classify,
    to_add,
    to_take_out_to_target,
)
from station.core.product import BagItem, Component, PackMode, Product, Share
from station.core.run import Run
from station.line.state import LastPack, LineState, Phase, Shown, Tally, Verb
from station.screens.offer import LeadOffer, Person

DAY = date(2026, 11, 25)
LONG_NAME = "Hand-cut rainbow carrot, fennel and red cabbage slaw with garden herbs"


def grams(text: str | int | Decimal) -> Mass:
    return Mass.of(text, Unit.GRAM)


COMPONENTS = (
    Component("ROM", "Romaine lettuce", max_age_days=6),
    Component("RAD", "Radicchio"),
    Component("CAR", "Carrot"),
)


def make_product(**changes: object) -> Product:
    shares = tuple(
        Share(component, Decimal(percent))
        for component, percent in zip(COMPONENTS, (60, 25, 15), strict=True)
    )
    product = Product(
        code="HARBOUR-250",
        version=3,
        name="Harbour leaf mix",
        gtin="9521234000013",
        market="EU",
        rule_set="eu-76-211",
        nominal=grams(250),
        floor=grams(250),
        target=grams(252),
        upper=grams(262),
        bag=BagItem("B6", "retail bag 28 cm", grams(6), "mean of 25 bags, film lot F-118"),
        mode=PackMode.FILL,
        recipe=shares,
        life_days=6,
        atmosphere="air",
        storage="Keep cold, 0 to 4 °C",
    )
    return replace(product, **changes)


LOTS = (
    InputLot("ROM-2611", "ROM", "Aldermoor Growers", date(2026, 11, 24), date(2026, 11, 23)),
    InputLot("ROM-2609", "ROM", "Aldermoor Growers", date(2026, 11, 23), status=LotStatus.HELD),
    InputLot("RAD-0418", "RAD", "Brackwater Farm", date(2026, 11, 24)),
    InputLot("CAR-7710", "CAR", "Tarn Roots", date(2026, 11, 22)),
    InputLot("CAR-7650", "CAR", "Tarn Roots", date(2026, 11, 12), status=LotStatus.EXPIRED),
)


def make_run(product: Product | None = None, order_size: int | None = 400) -> Run:
    product = product or make_product()
    window = Window(
        product.floor,
        product.target,
        product.upper,
        rule_set(product.rule_set).limits(product.nominal),
    )
    lots = tuple(lot for lot in LOTS if lot.status is LotStatus.FREE)
    return Run(
        id="0193-run",
        product=product,
        window=window,
        dating=Dating(DAY, date(2026, 12, 1), ""),
        lot_set=LotSet.of(LotUse(lot.component, lot.code) for lot in lots),
        lots=lots,
        blend_lot="A2632901",
        line="A",
        lead="P01",
        operator="P02",
        order_size=order_size,
        scale="bench scale, serial 0007",
        unit=Unit.GRAM,
        software="0.1.0",
    )


def state(
    phase: Phase,
    verb: Verb,
    net: str | int | None = None,
    *,
    run: Run | None = None,
    loaded: bool = True,
    steady: bool = True,
    spread: str | int = 0,
    because: str = "",
    good: bool = True,
) -> LineState:
    """A line's state as the line itself would say it."""
    run = run or make_run()
    shown, amount = None, None
    if net is not None:
        mass = grams(net)
        verdict: Verdict | None = classify(mass, run.window) if loaded else None
        gross = mass + run.product.bag.tare if loaded else mass
        shown = Shown(gross.digits, "g", mass, steady, grams(spread), verdict, 1)
        if verb is Verb.ADD:
            amount = to_add(mass, run.window)
        if verb is Verb.TAKE_OUT:
            amount = to_take_out_to_target(mass, run.window)
    return LineState(
        phase=phase,
        verb=verb,
        amount=amount,
        because=because,
        cycle=129,
        shown=shown,
        run=run,
        tally=Tally(128, 3, 128 * 252_400_000, 0),
        last=LastPack("P1-7K-000131", grams(253), good),
        port="/dev/scale",
    )


def every_state(run: Run | None = None) -> dict[str, LineState]:
    """Every picture by name, in the order of a bag's life."""
    loaded, lift = Phase.LOADED, Phase.LIFT
    clear = Phase.CLEAR_PAN
    closed = replace(
        state(Phase.CLOSED, Verb.START_RUN, because="no run is open: the lead starts one"),
        run=None,
        last=None,
        tally=Tally(),
    )
    return {
        "start_run": closed,
        "empty_pan": state(clear, Verb.EMPTY_PAN, 0, run=run, loaded=False),
        "bag_on": state(Phase.READY, Verb.BAG_ON, 0, run=run, loaded=False),
        "short_far": state(loaded, Verb.ADD, 92, run=run, steady=False, spread=14),
        "short_t2": state(loaded, Verb.ADD, 228, run=run),
        "short_t1": state(loaded, Verb.ADD, 238, run=run),
        "short_t1_unsteady": state(loaded, Verb.ADD, 243, run=run, steady=False, spread=5),
        "short_near": state(loaded, Verb.ADD, 249, run=run),
        "wait": state(loaded, Verb.WAIT, 253, run=run, steady=False, spread=3),
        "seal": state(Phase.LABELLING, Verb.SEAL, 253, run=run),
        "lift_bag": state(lift, Verb.LIFT_BAG, 253, run=run),
        "over_near": state(loaded, Verb.TAKE_OUT, 264, run=run),
        "over_far": state(loaded, Verb.TAKE_OUT, 291, run=run, steady=False, spread=4),
        "set_aside": state(
            lift, Verb.SET_ASIDE, 241, run=run, because="not labelled: below T1", good=False
        ),
        "order_done": state(
            Phase.READY,
            Verb.ORDER_DONE,
            0,
            run=run,
            loaded=False,
            because="400 bags are packed: the lead ends the run",
        ),
        "wipe_pan": state(
            clear,
            Verb.WIPE_PAN,
            3,
            run=run,
            loaded=False,
            because="the empty pan shows 3 g: wipe it, then zero the scale",
        ),
        "no_reading": state(
            clear,
            Verb.NO_READING,
            run=run,
            because="the scale is silent: check its cable and power",
        ),
        "stopped": state(
            Phase.STOPPED,
            Verb.CALL_LEAD,
            253,
            run=run,
            because="label P1-7K-000131 is in doubt: labels are jammed: clear them, after a page "
            "was out: look whether the label is whole",
        ),
    }


def make_offer() -> LeadOffer:
    people = (
        Person("P01", "Ilse Marrow", "lead"),
        Person("P05", "Bram Okafor", "lead"),
        Person("P02", "Tamsin Reyes", "packer"),
        Person("P03", "Joss Adeyemi", "packer"),
    )
    products = (
        make_product(),
        make_product(
            code="TARN-400",
            name="Tarn root slaw",
            nominal=grams(400),
            floor=grams(400),
            target=grams(403),
            upper=grams(415),
            version=1,
        ),
        make_product(code="SLAW-250", name=LONG_NAME, version=12),
        make_product(
            code="GLEN-180",
            recipe=(Share(COMPONENTS[0], Decimal(70)), Share(COMPONENTS[1], Decimal(30))),
            name="Glen rocket & radicchio",
            nominal=grams(180),
            floor=grams(180),
            target=grams(182),
            upper=grams(190),
            version=2,
        ),
    )
    return LeadOffer(products, LOTS, people)


def all_verbs(states: Sequence[LineState]) -> set[Verb]:
    return {one.verb for one in states}
