"""Roots and proofs against the published vectors of the RFC 6962 reference implementation.

They are those of transparency-dev/merkle, proof/verify_test.go and rfc6962/rfc6962_test.go. RFC
9162 takes the hashes and proofs of RFC 6962 over unchanged (its section 2.1).
"""

import hashlib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from station.core import merkle
from station.core.merkle import (
    Tree,
    consistency_path,
    inclusion_path,
    is_consistent,
    is_included,
    leaf_hash,
    node_hash,
    root,
    subtrees_of,
)

LEAVES = [
    leaf_hash(bytes.fromhex(data))
    for data in (
        "",
        "00",
        "10",
        "2021",
        "3031",
        "40414243",
        "5051525354555657",
        "606162636465666768696a6b6c6d6e6f",
    )
]
ROOTS = [
    bytes.fromhex(digits)
    for digits in (
        "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
        "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
        "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
        "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
        "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
        "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
        "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
        "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
        "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328",
    )
]
A, B, C, D, E, F, G, H = (
    "96a296d224f285c67bee93c30f8a309157f0daa35dc5b87e410b78630a09cfc7",
    "5f083f0a1a33ca076a95279832580db3e0ef4584bdff1f54c8a360f50de3031e",
    "6b47aaf29ee3c2af9af889bc1fb9254dabd31177f16232dd6aab035ca39bf6e4",
    "bc1a0643b12e4d2d7c77918f44e0f4f79a838b6cf9ec5b5c283e1f4d88599e6b",
    "ca854ea128ed050b41b35ffc1b87b8eb2bde461e9e3b5596ece6b9d5975a0ae0",
    "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
    "0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a",
    "b08693ec2e721597130641e8211e7eedccb4c26413963eee6c1e2ed16ffb1a5f",
)
INCLUSIONS = [
    (0, 1, []),
    (0, 8, [A, B, C]),
    (5, 8, [D, E, F]),
    (2, 3, [ROOTS[2].hex()]),
    (1, 5, [ROOTS[1].hex(), B, D]),
]
CONSISTENCIES = [
    (1, 1, []),
    (1, 8, [A, B, C]),
    (6, 8, [G, E, F]),
    (2, 5, [B, D]),
    (6, 7, [G, H, F]),
]

SIZES = st.integers(1, 70)


def leaves_of(size):
    return [leaf_hash(number.to_bytes(2, "big")) for number in range(size)]


def by_definition(leaves):
    """Section 2.1.1 word for word."""
    if not leaves:
        return hashlib.sha256(b"").digest()
    if len(leaves) == 1:
        return leaves[0]
    k = max(1 << power for power in range(10) if 1 << power < len(leaves))
    return node_hash(by_definition(leaves[:k]), by_definition(leaves[k:]))


def spoilt(path):
    """The same path with one thing wrong."""
    for at, one in enumerate(path):
        yield [*path[:at], bytes([one[0] ^ 8]) + one[1:], *path[at + 1 :]]
    yield [*path, bytes(32)]
    yield [bytes(32), *path]
    yield [*path, b""]
    if path:
        yield path[:-1]
        yield path[1:]


def test_hashes_of_leaf_and_node_are_the_published_ones():
    # rfc6962/rfc6962_test.go: an empty leaf, a leaf "L123456", a node of "N123" and "N456"
    assert leaf_hash(b"").hex() == (
        "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d"
    )
    assert leaf_hash(b"L123456").hex() == (
        "395aa064aa4c29f7010acfe3f25db9485bbd4b91897b6ad7ad547639252b4d56"
    )
    assert node_hash(b"N123", b"N456").hex() == (
        "aa217fe888e47007fa15edab33c2b492a722cb106c64667fc2b044444de66bbb"
    )


@pytest.mark.parametrize("size", range(9))
def test_roots_are_the_published_ones(size):
    assert root(LEAVES[:size]) == ROOTS[size]


@pytest.mark.parametrize(("index", "size", "path"), INCLUSIONS)
def test_inclusion_proofs_are_the_published_ones(index, size, path):
    made = inclusion_path(index, size, subtrees_of(LEAVES[:size]))
    assert [one.hex() for one in made] == path
    assert is_included(LEAVES[index], index, size, made, ROOTS[size])


@pytest.mark.parametrize(("old", "new", "path"), CONSISTENCIES)
def test_consistency_proofs_are_the_published_ones(old, new, path):
    made = consistency_path(old, new, subtrees_of(LEAVES[:new]))
    assert [one.hex() for one in made] == path
    assert is_consistent(old, ROOTS[old], new, ROOTS[new], made)


@given(SIZES)
def test_roots_are_those_of_the_definition_all_at_once_and_leaf_by_leaf(size):
    tree = Tree()
    assert tree.root() == root(()) == by_definition([])
    for leaf in leaves_of(size):
        tree.append(leaf)
    assert tree.root() == root(leaves_of(size)) == by_definition(leaves_of(size))


@given(st.data())
def test_each_leaf_is_proved_and_nothing_else_is(data):
    size = data.draw(SIZES)
    index = data.draw(st.integers(0, size - 1))
    leaves = leaves_of(size)
    path, top = inclusion_path(index, size, subtrees_of(leaves)), root(leaves)
    assert is_included(leaves[index], index, size, path, top)
    for wrong in spoilt(list(path)):
        assert not is_included(leaves[index], index, size, wrong, top)
    for other in {index - 1, index + 1, index ^ 2} & set(range(size)):
        assert not is_included(leaves[index], other, size, path, top)
    assert not is_included(leaf_hash(b"another"), index, size, path, top)
    assert not is_included(leaves[index], index, size, path, bytes(32))


@given(st.data())
def test_each_older_tree_begins_the_newer_and_nothing_else_does(data):
    new = data.draw(SIZES)
    old = data.draw(st.integers(1, new))
    leaves = leaves_of(new)
    path = consistency_path(old, new, subtrees_of(leaves))
    was, now = root(leaves[:old]), root(leaves)
    assert is_consistent(old, was, new, now, path)
    for wrong in spoilt(list(path)):
        assert not is_consistent(old, was, new, now, wrong)
    if old != new:
        changed = [leaf_hash(b"changed"), *leaves[1:]]
        assert not is_consistent(old, root(changed[:old]), new, now, path)
        assert not is_consistent(old, was, new, root(changed), path)
        assert not is_consistent(old, now, new, was, path)


def test_what_is_not_there_cannot_be_proved():
    with pytest.raises(ValueError, match="leaf 8 is not in a tree of 8"):
        inclusion_path(8, 8, subtrees_of(LEAVES))
    for old, new in ((0, 8), (9, 8)):
        with pytest.raises(ValueError, match="0 < old <= new"):
            consistency_path(old, new, subtrees_of(LEAVES))
        assert not is_consistent(old, bytes(32), new, bytes(32), [])
    assert not is_included(LEAVES[0], 0, 0, [], merkle.EMPTY)


def test_a_tree_keeps_as_many_hashes_as_its_size_has_bits():
    tree = Tree()
    for leaf in leaves_of(70):
        tree.append(leaf)
        assert len(tree._peaks) == tree.size.bit_count()
