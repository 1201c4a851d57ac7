"""Family trees out of a packed record, and their paper."""

import pypdfium2 as pdfium
import pytest

from station.core.genealogy import Stage
from station.errors import BadInput
from station.reports.genealogy import genealogy_pdf, tree_of
from tests.station.line.lot_rig import LotLine


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
