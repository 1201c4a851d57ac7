"""A line with its real store and lots, driven step by step in one thread, without a printer.

An invented packhouse: Quince Hollow, line A, a mix of romaine and carrot in 250 g bags.
"""

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from decimal import Decimal
from zoneinfo import ZoneInfo

from station.core.ids import new_uid
from station.core.line_lots import LotMove, Move, move_fact
from station.core.lot_set import LotUse
from station.core.lots import InputLot
from station.core.mass import Mass
from station.core.pack import Moment
from station.core.product import Share
from station.core.receiving import hold_lot_fact, release_lot_fact
from station.line.duties import Duties
from station.line.events import Labelled, LinkUp, SetAside, Weighed
from station.line.listeners import Listeners
from station.line.lot_book import LotBook
from station.line.lot_change import LotChanges, LotRules
from station.line.lot_duty import LotDuty
from station.line.messages import Enter, Start
from station.line.opening import Catalogue
from station.line.runner import LineRunner
from station.line.state import RunChoice
from station.store.line_past import LinePast
from station.store.lot_reach import bags_with
from station.store.queries import trace_lot, trace_pack
from station.store.writer import StationStore
from tests.station.line.runner_rig import RULES, CommandDesk
from tests.station.line.scenario import MS, grams, make_product, make_reading

DAY = date(2026, 11, 25)


def lot(code, component="ROM", received=DAY, **more):
    return InputLot(code, component, "Aldermoor Growers", received, **more)


LOTS = (lot("ROM-1"), lot("ROM-2"), lot("ROM-3"), lot("CAR-7", "CAR"), lot("CAR-8", "CAR"))


class PlantClock:
    """Wall clock of a plant in a zone; moved by hand, ten microseconds a look."""

    def __init__(self, utc, zone="UTC"):
        self.utc, self.zone, self.steady = utc, zone, 1_000 * MS

    def pass_by(self, milliseconds):
        self.utc += timedelta(milliseconds=milliseconds)
        self.steady += milliseconds * MS

    def now(self):
        self.steady += 1
        offset = self.utc.astimezone(ZoneInfo(self.zone)).utcoffset()
        return Moment(self.utc, int(offset.total_seconds()) // 60, self.zone, self.steady)

    def monotonic_ns(self):
        self.steady += 1
        return self.steady


class LotLine:
    """The line; every call comes back when all of it is done."""

    def __init__(
        self, home, *, products=(), lots=LOTS, rules=None, clock=None, on=True, station="A1"
    ):
        self.home, self.known = home, lots
        self.products = products or (make_product(),)
        self.clock = clock or PlantClock(datetime(2026, 11, 25, 9, tzinfo=UTC))
        self.log, self.answers, self.entered, self.states = [], [], [], []
        self.desk = CommandDesk(self.log)
        self.store = StationStore.open(home, "QH", station, self.clock)
        self.store.add_lots(lots, self.clock.now(), "station")
        self.book = LotBook(lots, given=lots)
        self.duty = LotDuty("A", self.book, LinePast(home, "A"), on=on)
        self.changes = LotChanges(
            line="A",
            on_line=self.duty,
            lots=self.book,
            rules=rules or LotRules(),
            rehearse=lambda run: self.desk.rehearse(run),
            next_number=self.store.next_blend_number,
            bags_with=lambda code: bags_with(home, code),
            new_id=new_uid,
        )
        self.runner = LineRunner(
            store=self.store,
            desk=self.desk,
            clock=self.clock,
            rules=RULES,
            catalogue=Catalogue(
                products={one.code: one for one in self.products},
                lots=self.book,
                line="A",
                cut_off=time(4),
                scale="bench",
                unit=grams(1).unit,
                software="0.1.0",
            ),
            new_id=new_uid,
            listeners=Listeners(
                state=self.states.append,
                answer=self.answers.append,
                sound=lambda sound: None,
                timing=lambda timing: None,
                entered=self.entered.append,
            ),
            duties=Duties((self.duty,)),
            lots=self.changes,
        )
        self.take(LinkUp("bench"))

    def take(self, message):
        self.runner._take(message)

    @property
    def run(self):
        return self.runner._cycle.run

    @property
    def state(self):
        return self.states[-1]

    def start(self, *codes, product=None):
        product = product or self.products[0]
        self.take(Start(RunChoice(product.code, product.version, codes, "P01", "P02")))
        assert self.answers[-1].started, self.answers[-1].words
        self.weigh(0)
        return self.run

    def end(self):
        self.runner._close("P01")

    def weigh(self, value, times=1):
        for _ in range(times):
            self.clock.pass_by(100)
            self.take(Weighed(make_reading(value, self.clock.steady // MS)))

    def on_pan(self, net="252"):
        """A bag up to its judgement."""
        self.weigh(int(net) + 6, 5)

    def bag(self, net="252"):
        """One bag, labelled and lifted; returns its serial."""
        self.on_pan(net)
        serial = self.state.last.serial
        self.take(Labelled(serial))
        self.weigh(0)
        return serial

    def bag_aside(self):
        """One bag that burst after its label; returns its serial."""
        self.on_pan()
        serial = self.state.last.serial
        self.take(Labelled(serial))
        self.take(SetAside("burst seal"))
        self.weigh(0)
        return serial

    def bags(self, number):
        return [self.bag() for _ in range(number)]

    def enter(self, *facts):
        self.take(Enter(facts, "P01"))
        return self.entered[-1]

    def move(self, *moves):
        now = self.clock.now()
        return self.enter(*(move_fact(move, new_uid(now), "A") for move in moves))

    def load(self, code, kilograms=None):
        quantity = None if kilograms is None else Mass.parse(f"{kilograms} kg")
        return self.move(LotMove(Move.LOADED, code, quantity=quantity))

    def empty(self, code):
        return self.move(LotMove(Move.EMPTY, code))

    def hold(self, code, uid="hold-1"):
        return self.enter(hold_lot_fact(uid, code, "the grower called"))

    def release(self, code, uid="hold-1"):
        return self.enter(release_lot_fact(new_uid(self.clock.now()), code, uid, "results came"))

    def recall(self, code):
        return [pack.serial for pack in trace_lot(self.home, code).packs]

    def close(self):
        self.store.close()


def with_shares(product, **shares):
    """The product with bounds: ``ROM=(66, 70, 74)``."""
    recipe = tuple(
        Share(one.component, Decimal(mid), Decimal(low), Decimal(high))
        for one in product.recipe
        for low, mid, high in (shares[one.component.code],)
    )
    return replace(product, recipe=recipe)


def rework(line, serials, packed_at, use_by):
    """The content of bags set aside goes back on the line."""
    found = trace_pack(line.home, serials[0])
    return LotMove(
        Move.REWORK,
        found.record.draft.blend_lot,
        quantity=Mass.parse("1.26 kg"),
        members=tuple(LotUse(one.component, one.code) for one in found.lots),
        use_by=use_by,
        packed_at=packed_at,
        serials=tuple(serials),
    )


def qualities(line, serials):
    """What the bags are worth now."""
    return {str(trace_pack(line.home, serial).quality) for serial in serials}
