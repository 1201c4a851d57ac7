"""The desk of the manager: adds a period up, writes its papers, makes the facts of signatures."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal
from pathlib import Path

from station.app.manager_money import money_of
from station.config.packhouse import Packhouse
from station.core.approvals import digest_of, refused_fact, target_fact, version_fact
from station.core.facts import Fact, FactRecord
from station.core.ids import new_uid
from station.core.long_work import share
from station.core.mass import Mass
from station.core.metrology.target import step_towards
from station.core.product import Product, ProductError
from station.line.opening import calendar_day
from station.line.ports import Clock
from station.line.product_book import ProductBook
from station.reports.files import write_whole
from station.reports.period import Period as Found
from station.reports.period import period
from station.screens.manager_source import Money, Pending, Period, Told
from station.screens.numbers_words import Row
from station.software_id import software_id
from station.store.bag_sums import production_days

_DAYS = {Period.DAY: 1, Period.WEEK: 7}
_PLACES = 9


class ManagerDesk:
    """Implements station.screens.manager_source.ManagerSource; any thread.

    Args:
        house: the settings.
        home: folder of the record; papers go to its folders ``reports`` and ``evidence``.
        clock: tells the time.
        book: knows products, proposals and approvals.
    """

    def __init__(self, house: Packhouse, home: Path, clock: Clock, book: ProductBook) -> None:
        self._house, self._home, self._clock, self._book = house, home, clock, book

    # --- long work ----------------------------------------------------------------------------

    def money(self, period: Period, told: Told) -> Money | None:
        """The figures of a period; None before the first bag."""
        told(5)
        found = self._found(period, told)
        return None if found is None else money_of(self._home, found, told)

    def report(self, period: Period, told: Told) -> tuple[Path, ...]:
        """Write the report of a period as PDF and tables."""
        from station.reports.period_pdf import period_pdf  # slow to load
        from station.reports.period_sheets import period_sheets
        from station.reports.traceability_sheet import csv_of

        found = self._found(period, told)
        if found is None:
            raise ProductError("no bag is on record yet: there is nothing to report")
        told(50)
        pdf = period_pdf(found)
        told(80)
        stem = f"report-{found.sums.first}-{found.sums.last}"
        files = {f"{stem}.pdf": pdf}
        for table in period_sheets(found):
            files[f"{stem}-{table.name.replace(' ', '-')}.csv"] = csv_of(table)
        return self._written("reports", files, told)

    def evidence(self, told: Told) -> tuple[Path, ...]:
        """Write the evidence pack of the last run."""
        from station.reports.evidence import By, evidence_of_run  # slow to load
        from station.reports.evidence_pdf import evidence_pdf
        from station.reports.evidence_sheets import evidence_files

        water = self._house.settings.lots.water
        by = By(self._house.settings.record.key_of(self._home))
        with share(5, 80):
            found = evidence_of_run(self._home, "last", software_id(), water, by)
        with share(80, 90):
            files = evidence_files(found, evidence_pdf(found))
        run = found.runs[-1].record.run
        return self._written(f"evidence/{run.blend_lot}", files, told)

    def _found(self, asked: Period, told: Told) -> Found | None:
        days = production_days(self._home)
        if not days:
            return None
        told(10)
        length = _DAYS.get(asked)
        first = None if length is None else days[-1] - timedelta(days=length - 1)
        settings = self._house.settings
        water, cut_off = settings.lots.water, settings.cut_off
        with share(10, 45):
            return period(self._home, first, days[-1], self._house.prices, water, cut_off)

    def _written(self, folder: str, files: dict[str, bytes], told: Told) -> tuple[Path, ...]:
        place = self._home / folder
        place.mkdir(parents=True, exist_ok=True)
        told(90)  # from here on all of them are written, or none
        for name, content in files.items():
            write_whole(place / name, content)
        told(100)
        return tuple(place / name for name in files)

    # --- signatures ---------------------------------------------------------------------------

    def pending(self) -> tuple[Pending, ...]:
        """Proposed targets nobody answered, then product versions nobody approved as they are."""
        targets = (
            Pending(
                record.fact.uid,
                f"target of {record.fact.subject}",
                self._target_rows(record, product),
                may_refuse=True,
            )
            for record in self._book.proposals()
            if (product := self._book.as_set.get(record.fact.subject)) is not None
        )
        versions = (
            Pending(
                code,
                f"product {code} version {product.version}, as it is set",
                self._version_rows(product),
            )
            for code, product in self._book.as_set.items()
            if self._book.approval(code) is None
        )
        return (*targets, *versions)

    def approve(self, key: str) -> tuple[Fact, ...]:
        """The facts that approve a target or a version."""
        record = self._proposal(key)
        if record is None:
            product = self._book.as_set[key]
            return (version_fact(self._uid(), product, product.effective_from),)
        product = self._product(record)
        return (target_fact(self._uid(), product, self._next(record, product), key),)

    def refuse(self, key: str, reason: str) -> tuple[Fact, ...]:
        """The facts that refuse a target."""
        record = self._proposal(key)
        if record is None:
            raise ProductError("a version is not refused: it just stays without approval")
        product = self._product(record)
        return (refused_fact(self._uid(), product, self._next(record, product), key, reason),)

    def _proposal(self, key: str) -> FactRecord | None:
        return next((one for one in self._book.proposals() if one.fact.uid == key), None)

    def _product(self, record: FactRecord) -> Product:
        product = self._book.as_set[record.fact.subject]
        version = record.fact.details["version"]
        if version != product.version:
            raise ProductError(
                f"the proposal is for version {version}; {product.code} is at {product.version}"
            )
        return product

    def _next(self, record: FactRecord, product: Product) -> Mass:
        """The proposed target, or as far towards it as one approval goes."""
        proposed = _mass(record, "target")
        now = self._book[product.code].target
        step = self._house.settings.fill.most_step
        if step is None:
            return proposed
        most = float(step.in_unit(now.unit).amount)
        found = step_towards(float(now.amount), float(proposed.amount), most)
        return Mass(_decimal(found), now.unit)

    def _target_rows(self, record: FactRecord, product: Product) -> tuple[Row, ...]:
        details, unit = record.fact.details, product.target.unit
        now, proposed = self._book[product.code].target, _mass(record, "target")
        rows = [
            Row("now", f"{now}", f"set to {product.target} in the settings"),
            Row("proposed", f"{proposed}", f"by {record.who}, {record.at.utc:%Y-%m-%d %H:%M} UTC"),
            Row("gives away", f"{_short(details['giveaway'])} {unit} a bag",
                f"mean {_short(details['mean'])}, now {_short(details['mean_now'])}"),
            Row("held up by", str(details["governing"]), f"{details['fills']} bags of one run"),
        ]  # fmt: skip
        if details["version"] != product.version:
            rows.append(Row("version", f"{details['version']}", "another one is set", attend=True))
            return tuple(rows)
        step = self._next(record, product)
        note = "" if step == proposed else "as far as one approval goes"
        rows.append(Row("you approve", f"{step}", note, 1.2))
        return tuple(rows)

    def _version_rows(self, product: Product) -> tuple[Row, ...]:
        needed = self._book.approval_needed
        effective = product.effective_from or "at once"
        return (
            Row("name", product.name),
            Row("nominal", f"{product.nominal}", f"floor {product.floor}, upper {product.upper}"),
            Row("target", f"{product.target}", f"tare {product.bag.tare}, {product.bag.basis}"),
            Row("use by", f"{product.life_days} days", product.atmosphere),
            Row("holds from", f"{effective}"),
            Row("digest", digest_of(product)[:16], "of everything the version says"),
            Row(
                "without it",
                "may not be run" if needed else "may be run",
                "the settings say so",
                attend=needed,
            ),
        )

    # --- lists --------------------------------------------------------------------------------

    def people(self) -> tuple[Row, ...]:
        """Everybody with the day their training holds to; what is over comes first."""
        today = calendar_day(self._clock.now())
        rows = []
        for one in self._house.people.values():
            until = one.trained_until
            over = until is not None and until < today
            value = "no day given" if until is None else until.isoformat()
            note = f"{one.id}, {one.role}" + (": TRAINING IS OVER" if over else "")
            rows.append(Row(one.name, value, note, attend=over))
        return tuple(sorted(rows, key=lambda row: not row.attend))

    def lives(self) -> tuple[Row, ...]:
        """The shelf-life policy, each atmosphere with the products in it."""
        rows = []
        for one in self._house.lives:
            inside = ", ".join(
                f"{product.code} {product.life_days} d"
                for product in self._house.products.values()
                if product.atmosphere == one.atmosphere
            )
            note = f"{inside or 'no product has it'}; {one.basis}"
            rows.append(Row(one.atmosphere, f"{one.least_days} to {one.most_days} days", note))
        return tuple(rows)

    def _uid(self) -> str:
        return new_uid(self._clock.now())


def _mass(record: FactRecord, name: str) -> Mass:
    details = record.fact.details
    return Mass.of(format(_decimal(float(str(details[name]))), "f"), str(details["unit"]))


def _decimal(number: float) -> Decimal:
    """A figure that was digits once, without the tail of a binary float."""
    return Decimal(str(round(number, _PLACES))).normalize()


def _short(digits: object) -> str:
    return f"{float(str(digits)):.2f}"
