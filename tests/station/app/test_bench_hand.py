"""Two hands at one pan, as at the start of a demo: the lead checks while somebody takes a bag."""

from drivers.bench import BenchScale
from station.app.bench_hand import DemoHand
from station.app.watch import Watch


def test_a_bag_does_not_go_on_what_lies_there_already():
    bench = BenchScale()
    hand = DemoHand(bench, Watch(), 1)
    bench.put_bag(2000)
    assert not hand.put_bag()
    assert bench.lift() == 2000
    assert hand.put_bag()
    assert 5 < bench.lift() < 7
