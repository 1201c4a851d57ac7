"""The lead and QA of a simulated week: deliveries, gates, checks, pauses, and ends of runs."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from decimal import ROUND_UP, Decimal

from station.app.practice import lead_of, second_of
from station.app.week.room import Room
from station.core.checks.qa import REFERENCE, QaLimit
from station.core.checks.rolls import RollCount
from station.core.checks.suspect import Decision, FiledWindow, window_of
from station.core.clearance import Gate, Point
from station.core.facts import FactRecord
from station.core.journal import EntryKind
from station.core.line_lots import LotMove, Move
from station.core.mass import Mass, Unit
from station.core.metrology.scale_check import CheckReading, judge_check
from station.core.pack import PackRecord
from station.core.pauses import LOOKS, Reason
from station.core.product import Product
from station.core.receiving import Notes
from station.core.run import Run
from station.errors import EnvironmentFault
from station.line.state import RunChoice

_ROLL = 3000
"""Labels on a roll."""
_GATE_S = 40.0
"""What one gate takes."""
_KG_SPARE = Decimal("1.06")
"""So much more than the bags need is delivered and loaded."""
_MOST_GATES = 40
_NOTHING = "]C1?"
"""A scan that names no bag."""


@dataclass(frozen=True, slots=True)
class Loaded:
    """A lot that was delivered for a run, and how much of it."""

    code: str
    component: str
    quantity: Mass


class Lead:
    """Does what a lead does, and QA where two people are wanted.

    Args:
        room: the station.
        few: draws a number from 0 to a given one.
    """

    def __init__(self, room: Room, few: Callable[[int], int]) -> None:
        self._room, self._few = room, few
        self.who, self.second = lead_of(room.house), second_of(room.house)
        self.wrong_g = 0
        """What the scale shows too much at every load."""
        self.bag_more: Mass | None = None
        """What an empty bag weighs more than its declared tare; None while it fits."""
        self._lot_numbers: dict[str, int] = {}
        self._rolls = 0
        self.last: PackRecord | None = None
        """The bag labelled last."""

    # --- lots ---------------------------------------------------------------------------------

    def deliver(self, product: Product, bags: int) -> tuple[Loaded, ...]:
        """Take in what a run needs: two lots of its first component, one of each other."""
        found = []
        need = Decimal(bags) * product.target.in_unit(Unit.GRAM).amount * _KG_SPARE
        for share in product.recipe:
            parts = 2 if share is product.recipe[0] else 1
            grams = need * share.percent / 100 / parts
            whole = Mass((grams / 1000).quantize(Decimal("0.1"), ROUND_UP), Unit.KILOGRAM)
            found += [self._received(share.component.code, whole) for _ in range(parts)]
        return tuple(found)

    def _received(self, component: str, quantity: Mass) -> Loaded:
        room = self._room
        day = room.clock.now().utc.date()
        suppliers = sorted(
            {one.supplier for one in room.house.lots.values() if one.component == component}
        )
        number = self._lot_numbers[component] = self._lot_numbers.get(component, 0) + 1
        supplier = suppliers[number % len(suppliers)] if suppliers else "UNKNOWN"
        notes = Notes(
            code=f"{supplier[:2].upper()}-{component.replace('-', '')[:4]}{day:%y%j}.{number}",
            component=component,
            supplier=supplier,
            quantity=quantity,
            temperature=Decimal(20 + self._few(25)) / 10,
            reference=f"delivery note {4000 + sum(self._lot_numbers.values())}",
        )
        code, made = room.lots.received(notes, "")
        room.enter(self.who, *made)
        return Loaded(code, component, quantity)

    def load(self, *lots: Loaded) -> None:
        """Put lots on the line; a lot of the same component there begins to finish."""
        moves = [LotMove(Move.LOADED, one.code, one.component, one.quantity) for one in lots]
        self._room.enter(self.who, *self._room.lots.moves(moves))

    def empty(self, lot: str) -> None:
        """Declare a finishing lot empty."""
        self._room.enter(self.who, *self._room.lots.moves([LotMove(Move.EMPTY, lot)]))

    def clear_lots(self) -> None:
        """Weigh what is left of each lot on the line and return it; a little went on the floor."""
        moves = []
        for row in self._room.lots.rows():
            left, loaded = row.balance.left, row.balance.loaded
            grams = Decimal(0)
            if left is not None and loaded is not None:
                grams = Decimal(int(left.likely - loaded * (1 + self._few(3)) / 100))
            kilograms = round(grams / 1000, 1)
            rest = Mass(max(kilograms, Decimal(0)), Unit.KILOGRAM)
            moves.append(LotMove(Move.RETURNED, row.lot, row.component, rest))
        if moves:
            self._room.enter(self.who, *self._room.lots.moves(moves))

    # --- a run --------------------------------------------------------------------------------

    def open(self, product: Product, order: int, operator: str, lots: Sequence[Loaded]) -> Run:
        """Open a run with lots that are on the line already, and pass its gates."""
        chosen = tuple(one.code for one in lots)
        choice = RunChoice(product.code, product.version, chosen, self.who, operator, order)
        run = self._room.open_run(choice)
        self.last = None
        self.pass_gates()
        return run

    def end(self) -> None:
        """Check scale and last label, count the roll, and end the run."""
        room = self._room
        if room.checks.scale_on:
            self.check_scale()
        self.check_quality(room.quality.checks.limits(room.run))
        if self.last is not None and room.labels.scans_on:
            self.scan()
        self.roll_out()
        room.end_run(self.who)
        room.clock.move(_GATE_S)

    def pass_gates(self) -> None:
        """Do what is lacking until bags are taken.

        Raises:
            EnvironmentFault: something stays closed.
        """
        for _ in range(_MOST_GATES):
            words = self._room.closing()
            if not words:
                return
            self._room.clock.move(_GATE_S)
            if not self._pass_one():
                raise EnvironmentFault("the simulated lead cannot open the line", words)
        raise EnvironmentFault("the simulated line stays closed", self._room.closing())

    def _pass_one(self) -> bool:
        room = self._room
        checks, labels = room.checks, room.labels
        steps: tuple[tuple[bool, Callable[[], object]], ...] = (
            (bool(room.change.wanting), self._sign),
            (checks.scale_on and checks.scale_wanted, self.check_scale),
            (checks.tare_on and checks.tare_wanted, self.weigh_empty_bag),
            (labels.roll_wanted, self.roll_in),
            (labels.first_off_wanted, self._first_off),
            (labels.scan_wanted, self.scan),
            (bool(room.quality.checks.wanted), self.check_quality),
        )
        step = next((step for wanted, step in steps if wanted), None)
        if step is None:
            return False
        step()
        return True

    def _sign(self) -> None:
        change = self._room.change
        if change.wanting[0] is Gate.CLEARED:
            self._room.enter(self.who, change.cleared(dict.fromkeys(Point, True)))
        else:
            before = change.before()
            assert before is not None, "a run before is counted"
            self._room.enter(self.who, change.counted(before.bags, None))

    # --- checks -------------------------------------------------------------------------------

    def check_scale(self) -> tuple[FactRecord, ...]:
        """Put the test weights on; returns the check with what it brought with it."""
        room, desk = self._room, self._room.checks
        wrong = Mass.of(self.wrong_g).in_unit(desk.plate.interval.unit)
        readings = [
            CheckReading(one.load, one.weights, one.mass + wrong if one.mass.amount else one.mass)
            for one in desk.planned(room.run)
        ]
        check = judge_check(desk.plate, readings, room.clock.now().utc, desk.stage)
        return room.enter(self.who, desk.check(check, room.run))

    def check_quality(self, limits: Sequence[QaLimit] = ()) -> None:
        """Have QA make the checks that are due, or others; all of them are good."""
        room, desk = self._room, self._room.quality.checks
        for limit in limits or desk.wanted:
            value = None if limit.most is None else limit.most - Decimal(self._few(8)) / 10
            note = f"wash record {room.clock.now().utc:%y%j}" if limit.kind is REFERENCE else ""
            check = desk.check(limit, room.run, value, found=limit.pieces, note=note)
            room.enter(self.second, check)

    def let_hold_stay(self, found: Sequence[FactRecord]) -> FiledWindow:
        """Have QA let the hold stay that a failed check brought with it; returns its window.

        Args:
            found: the check with what it brought.
        """
        room = self._room
        window = next(
            made
            for one in found
            if one.fact.kind is EntryKind.SUSPECT and (made := window_of(one)) is not None
        )
        why = "the bags stay held until QA has looked"
        room.enter(self.second, *room.checks.decide(window, Decision.HOLD_STAYS, why))
        return window

    def weigh_empty_bag(self) -> tuple[FactRecord, ...]:
        """Weigh an empty bag; returns it with what it brought with it."""
        room, item = self._room, self._room.run.product.bag
        interval = room.checks.plate.interval
        shown = item.tare.in_unit(interval.unit) - interval * self._few(1)
        if self.bag_more is not None:
            shown = item.tare.in_unit(interval.unit) + self.bag_more.in_unit(interval.unit)
        _, fact = room.checks.empty_bag(room.run, self.film_lot, shown)
        return room.enter(self.who, fact)

    def study_bags(self) -> Product:
        """Study the bags in use and return the product with the tare they have."""
        room, product = self._room, self._room.run.product
        interval = room.checks.plate.interval
        assert self.bag_more is not None, "the bags differ from what is declared"
        tare = product.bag.tare.in_unit(interval.unit) + self.bag_more.in_unit(interval.unit)
        bags = [tare - interval * self._few(1) for _ in range(room.checks.study_bags)]
        study, fact = room.checks.study(room.run, self.film_lot, bags)
        room.enter(self.who, fact)
        self.bag_more = None
        basis = f"study of {len(bags)} bags, film lot {self.film_lot}, {study.shown()}, rounded up"
        item = replace(product.bag, tare=tare, basis=basis)
        return replace(product, version=product.version + 1, bag=item)

    @property
    def film_lot(self) -> str:
        """The film lot in use."""
        code = self._room.run.product.bag.code
        return f"F-{code}-{'2' if self.bag_more is not None else '1'}"

    def pause(self, reason: Reason, seconds: float) -> None:
        """Let the line stand."""
        change = self._room.change
        self._room.enter(self.who, change.stop(reason))
        self._room.clock.move(seconds)
        self._room.enter(self.who, change.go_on(frozenset(LOOKS[reason])))
        self.pass_gates()

    # --- labels -------------------------------------------------------------------------------

    @property
    def roll_is_spent(self) -> bool:
        """Whether the roll in the printer should be changed before the next bag."""
        return self._printed >= _ROLL - 50

    def labelled(self, record: PackRecord) -> None:
        """Count a label."""
        self.last = record
        self._printed += 1

    def roll_in(self, name: str = "") -> str:
        """Put a roll in; returns its id."""
        self._rolls += 1
        self._printed = 0
        roll = name or f"LR-{self._rolls:04d}"
        self._room.enter(self.who, self._room.labels.put_in(roll, _ROLL, self._room.run))
        return roll

    def roll_out(self) -> None:
        """Take the roll out and count what is left; a few labels were spoiled."""
        desk = self._room.labels
        if not desk.roll_inside:
            return
        inside = desk.rolls()[-1]
        spoiled = min(self._few(15), inside.issued - inside.used)
        count = RollCount(inside.issued - inside.used - spoiled, spoiled, 0)
        self._room.enter(self.who, desk.take_out(count, self._room.run))

    def scan(self, instead: str = "") -> bool:
        """Scan the label of the last bag, or another text; returns whether it is equal."""
        desk, run = self._room.labels, self._room.run
        assert self.last is not None, "a label was applied"
        serial = self.last.serial
        scan, fact = desk.scan(run, instead or _NOTHING, serial)
        if not instead:
            scan, fact = desk.scan(run, scan.expected[0], serial)
        self._room.enter(self.who, fact)
        return scan.equal

    def clear_scan(self, reason: str) -> None:
        """Go on after a label that said something else."""
        self._room.enter(self.who, self._room.labels.clear(self.who, reason))

    def _first_off(self) -> None:
        desk = self._room.labels
        self._room.enter(self.who, desk.first_off(self._room.run, self.who, self.second))

    _printed = 0
