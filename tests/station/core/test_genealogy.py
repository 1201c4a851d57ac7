"""The picture of a family tree: nothing overlaps, nothing is lost, product flows to the right."""

from itertools import combinations

from hypothesis import given
from hypothesis import strategies as st

from station.core.genealogy import Node, Stage, Tree, folded, layout


@st.composite
def trees(draw):
    nodes, links = [], set()
    for stage in Stage:
        beyond = stage in (Stage.CASE, Stage.PALLET, Stage.SHIPMENT)
        count = draw(st.integers(0 if beyond else 1, 12))
        before = [at for at, node in enumerate(nodes) if node.stage is _before(stage)]
        for number in range(count):
            nodes.append(Node(stage, f"{stage}{number}", f"{stage} {number}",
                              attend=draw(st.booleans()),
                              asked=stage is Stage.LOT and number == count - 1))  # fmt: skip
            links |= {(draw(st.sampled_from(before)), len(nodes) - 1)} if before else set()
    return Tree("lot", tuple(nodes), frozenset(links))


def _before(stage):
    order = list(Stage)
    place = order.index(stage)
    return order[place - 1] if place else None


@given(trees(), st.integers(2, 8))
def test_a_folded_tree_keeps_what_was_asked_for_every_link_and_every_hold(tree, most):
    small = folded(tree, most)
    for stage in Stage:
        column = [small.nodes[at] for at in small.column(stage)]
        whole = [tree.nodes[at] for at in tree.column(stage)]
        assert len(column) == min(len(whole), most)
        assert any(one.attend for one in column) == any(one.attend for one in whole)
        if len(whole) > most:
            shown = len(column) - 1
            assert column[-1].title == f"and {len(whole) - shown} more"
    assert sum(node.asked for node in small.nodes) == 1
    assert bool(small.links) == bool(tree.links)
    assert all(one < len(small.nodes) and other < len(small.nodes) for one, other in small.links)


@given(trees(), st.floats(200, 4000), st.floats(100, 3000))
def test_no_two_boxes_overlap_and_all_lie_in_the_picture(tree, width, height):
    small = folded(tree)
    boxes = layout(small, width, height, 120)
    slack = 1e-6 * (width + height)
    for box in boxes:
        assert -slack <= box.left <= box.right <= width + slack
        assert -slack <= box.top
        assert box.top + box.height <= height + slack
        assert box.height <= 120
    for one, other in combinations(boxes, 2):
        beside = one.right <= other.left + slack or other.right <= one.left + slack
        below = one.top + one.height <= other.top + slack
        above = other.top + other.height <= one.top + slack
        assert beside or below or above
    assert all(boxes[one].right < boxes[other].left for one, other in small.links)
