"""Family trees out of a packed record, and their paper."""

import pypdfium2 as pdfium
import pytest

from station.core.genealogy import Stage
from station.core.shipping import Undoing
from station.errors import BadInput
from station.reports.genealogy import tree_of
from station.reports.genealogy_pdf import genealogy_pdf
from tests.station.line.lot_rig import LotLine
from tests.station.store.conftest import World
from tests.station.store.dock import MARSHGATE, Dock, number, shipped_record
from tests.station.store.old_runs import old_runs


@pytest.fixture(scope="module")
def packed(tmp_path_factory):
    line = LotLine(tmp_path_factory.mktemp("tree") / "home")
    line.start("ROM-1", "CAR-7")
    old = line.bags(3)
    line.load("ROM-2")
    both = line.bags(4)
    line.hold("CAR-8")
    run, code = line.run.id, line.run.blend_lot
    line.close()
    return line.home, old, both, run, code


def names(tree, stage):
    return [tree.nodes[at].key for at in tree.column(stage)]


def test_a_lot_leads_to_its_blends_its_run_and_all_its_bags(packed):
    home, old, both, run, _ = packed
    tree = tree_of(home, "ROM-1")
    assert names(tree, Stage.LOT) == ["CAR-7", "ROM-1", "ROM-2"]
    assert len(names(tree, Stage.BLEND)) == 2
    assert names(tree, Stage.RUN) == [run]
    assert names(tree, Stage.BAGS) == [old[0], both[0]]
    assert tree.answer == "7 bags, 1.764 kg"
    (asked,) = [node for node in tree.nodes if node.asked]
    assert asked.key == "ROM-1"


def test_a_bag_typed_or_scanned_leads_back_to_its_own_lots_alone(packed):
    home, old, _, run, _ = packed
    for text in (old[1], f"]d2010952123454321310A2632901\x1d21{old[1]}"):
        tree = tree_of(home, text)
        assert tree.asked == old[1]
        assert names(tree, Stage.LOT) == ["CAR-7", "ROM-1"]
        assert names(tree, Stage.RUN) == [run]
        assert names(tree, Stage.BAGS) == [old[1]]


def test_a_code_may_be_typed_in_small_letters(packed):
    home, old, _, run, _ = packed
    assert tree_of(home, "rom-1") == tree_of(home, "ROM-1")
    assert tree_of(home, old[1].lower()) == tree_of(home, old[1])
    assert tree_of(home, run) == tree_of(home, f" {run} ")
    with pytest.raises(BadInput, match="input lot 'rom-11'"):
        tree_of(home, "rom-11")


def test_every_key_of_a_tree_is_itself_a_tree(packed):
    home = packed[0]
    tree = tree_of(home, "ROM-2")
    for node in tree.nodes:
        assert tree_of(home, node.key).nodes, node
    held = tree_of(home, "CAR-8")
    assert held.nodes[0].attend
    assert "HELD" in held.nodes[0].lines


def test_what_is_not_there_is_refused_with_close_ones(packed):
    home, old, *_ = packed
    with pytest.raises(BadInput, match="close to it are"):
        tree_of(home, f"{old[0]}9")
    with pytest.raises(BadInput, match=r"input lot 'ROM-11' .* close to it are ROM-1"):
        tree_of(home, "ROM-11")


def test_paper_shows_every_node_on_one_page_and_is_the_same_twice(packed):
    tree = tree_of(packed[0], "ROM-1")
    content = genealogy_pdf(tree)
    document = pdfium.PdfDocument(content)
    assert len(document) == 1
    text = document[0].get_textpage().get_text_range()
    assert all(node.title in text for node in tree.nodes)
    assert genealogy_pdf(tree) == content


# --- beyond the bag -------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def shipped(tmp_path_factory):
    return shipped_record(tmp_path_factory.mktemp("shipped") / "home")


def linked(tree):
    return {(tree.nodes[one].key, tree.nodes[other].key) for one, other in tree.links}


def test_a_lot_leads_on_to_the_cases_pallets_and_customers_of_its_bags(shipped):
    home, cases, pallet, single = shipped.home, shipped.cases, shipped.pallet, shipped.single
    tree = tree_of(home, "LF-101")
    assert names(tree, Stage.CASE) == [*cases, single]
    assert names(tree, Stage.PALLET) == [pallet]
    assert names(tree, Stage.SHIPMENT) == ["S-1"]
    steps = {(cases[0], pallet), (cases[1], pallet), (pallet, "S-1"), (single, "S-1")}
    assert steps <= linked(tree)
    assert tree.answer.endswith("kg, 6 with customers")
    (customer,) = [node for node in tree.nodes if node.stage is Stage.SHIPMENT]
    assert customer.title == MARSHGATE.name
    assert {"S-1", "delivery note 12"} <= set(customer.lines)
    assert customer.attend  # what it got is held now


def test_a_bag_leads_on_to_its_own_case_alone(shipped):
    home, cases, pallet = shipped.home, shipped.cases, shipped.pallet
    tree = tree_of(home, shipped.good[4])
    assert names(tree, Stage.CASE) == [cases[1]]
    assert names(tree, Stage.PALLET) == [pallet]
    assert names(tree, Stage.SHIPMENT) == ["S-1"]
    loose = tree_of(home, shipped.good[6])
    assert names(loose, Stage.CASE) == names(loose, Stage.SHIPMENT) == []


def test_a_case_or_pallet_typed_or_scanned_opens_with_its_bags_and_lots(shipped):
    home, cases, pallet = shipped.home, shipped.cases, shipped.pallet
    for text in (cases[1], f"]C100{cases[1]}"):
        tree = tree_of(home, text)
        assert tree.asked == cases[1]
        assert names(tree, Stage.LOT) == ["CR-201", "LF-101"]
        assert names(tree, Stage.CASE) == [cases[1]]
        assert tree.answer.startswith("2 bags, 0.505 kg")  # by hand: twice 252.5 g
        assert [node.key for node in tree.nodes if node.asked] == [cases[1]]
    whole = tree_of(home, pallet)
    assert names(whole, Stage.CASE) == cases
    assert whole.answer.startswith("5 bags")


def test_every_key_beyond_the_bag_is_itself_a_tree(shipped):
    home = shipped.home
    for node in tree_of(home, "S-1").nodes:
        assert tree_of(home, node.key).nodes, node
    with pytest.raises(BadInput, match=f"close to it are.*{shipped.pallet}"):
        tree_of(home, "095212340000000990")


def test_what_is_undone_still_shows_what_was_in_it(tmp_path):
    world = World(tmp_path / "home")
    with world.stocked() as store:
        dock = Dock(world, store)
        one, two = dock.labelled(1, dock.good[:3]), dock.labelled(2, dock.good[3:5])
        pallet = dock.pallet(3, one, two)
        dock.undo("S-1", Undoing.CAME_BACK, dock.ship("S-1", pallet.sscc))
        back = tree_of(world.home, "S-1")
        assert (pallet.sscc, "S-1") in linked(back)
        assert "SHIPMENT CAME BACK" in back.nodes[-1].lines
        assert back.answer == "5 bags, 1.2625 kg"
        dock.undo(pallet.sscc, Undoing.BROKEN_UP, dock.unit(pallet).uid)
        apart = tree_of(world.home, pallet.sscc)
        assert {(one.sscc, pallet.sscc), (two.sscc, pallet.sscc)} <= linked(apart)
        assert apart.nodes[-1].lines == ("BROKEN UP",)
        dock.undo(one.sscc, Undoing.OPENED, dock.unit(one).uid)
        opened = tree_of(world.home, one.sscc)
        assert opened.answer.startswith("3 bags")
        assert (dock.good[0], one.sscc) in linked(opened)


def test_paper_shows_a_tree_as_far_as_the_customer(shipped):
    tree = tree_of(shipped.home, "LF-101")
    document = pdfium.PdfDocument(genealogy_pdf(tree))
    assert len(document) == 1
    text = document[0].get_textpage().get_text_range()
    assert all(word in text for node in tree.nodes for word in node.title.split())
    assert all(head in text for head in ("CASES", "PALLETS", "CUSTOMERS"))


def test_a_tree_of_what_was_purged_says_so(tmp_path):
    made = old_runs(World(tmp_path / "home"))
    made.purge(tmp_path / "out")
    for asked in ("LF-101", "S-1", number(1)):
        assert tree_of(made.home, asked).answer.endswith(
            "; 1 run was purged on 2032-03-02, export out"
        ), asked
    for asked in (made.serials[1][0], made.runs[1].id, made.runs[1].blend_lot):
        with pytest.raises(BadInput, match="was purged"):
            tree_of(made.home, asked)
    assert "purged" not in tree_of(made.home, "LF-103").answer
