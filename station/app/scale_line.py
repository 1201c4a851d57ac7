"""How the settings' scale is opened, asked, read and believed."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial

from drivers.connection import LinkRules
from drivers.conversation import LISTEN, AskRules
from drivers.frames.base import FrameParser
from drivers.frames.described import DescribedParser
from drivers.frames.description import Description
from drivers.frames.hid_scale import SET_ZERO, HidScaleParser
from drivers.frames.plain_commands import PlainCommands
from drivers.frames.scp0499 import Scp0499Parser
from drivers.link import ScaleLink
from drivers.link_items import LinkItem
from drivers.port import PortSettings
from drivers.steady import SteadyRules
from drivers.wire import WireLog
from station.config.packhouse import Packhouse, ScaleSettings

_MS = 1_000_000
_OUTCOME_MS = 2_000
"""A scale that answers nothing has this long to show what it was told."""
_WARM_UP_MS = 2_000
"""A scale whose line was lost may have been switched off: it settles first."""
NO_SCALE = ("recording", "the scale is a recording: no bag is taken from it")
"""Why bags whose weights were sent once before are no bags, and by which source."""
_SPREAD_MS = 500
"""The spread looks back half a second."""


def bench_house(house: Packhouse) -> Packhouse:
    """The same packhouse with the simulated scale in place of its own: that speaks SMA SCP-0499."""
    scale = replace(house.settings.scale, protocol="scp0499", description=None)
    return replace(house, settings=replace(house.settings, scale=scale))


def new_parser(scale: ScaleSettings) -> Callable[[], FrameParser]:
    """What makes the parser of the scale's line."""
    if scale.description is not None:
        return partial(DescribedParser, scale.description)
    return HidScaleParser if scale.protocol == "hid" else Scp0499Parser


def link_rules(scale: ScaleSettings, haste: float = 1.0) -> LinkRules:
    """How the scale is asked, and when it is believed after its line was lost.

    Args:
        scale: of the settings.
        haste: how much faster than real time the scale goes.
    """
    rules = LinkRules(warm_up_ns=round(_WARM_UP_MS * _MS / haste))
    rules = replace(rules, gulp_ns=round(rules.gulp_ns / haste))
    told = commands_of(scale)
    if told is None:
        return replace(rules, discover=True)
    asked = LISTEN if scale.description is None else _asked(scale.description)
    ask = replace(asked, outcome_ns=_OUTCOME_MS * _MS)
    return replace(rules, ask=ask, outcome=told.outcome, name_of=told.name_of)


def commands_of(scale: ScaleSettings) -> PlainCommands | None:
    """What the scale can be told; None for one that says so itself."""
    if scale.description is not None:
        return scale.description.commands
    return PlainCommands(zero=SET_ZERO) if scale.protocol == "hid" else None


def steady_rules(scale: ScaleSettings, stale_ms: int, haste: float) -> SteadyRules:
    """What makes a reading of the scale usable.

    Args:
        scale: of the settings.
        stale_ms: a reading older than this does not exist.
        haste: how much faster than real time the scale goes.
    """
    described = scale.description
    return SteadyRules(
        agree_frames=2 if described is None else described.agree_frames,
        interval=scale.interval.amount,
        zero_band=scale.interval.amount / 2,  # one interval left on the pan is no zero
        unit=str(scale.unit),
        capacity=scale.capacity.amount,
        spread_window_ns=max(1, round(_SPREAD_MS * _MS / haste)),
        stale_after_ns=stale_ms * _MS,
    )


def scale_link(
    scale: ScaleSettings,
    port: PortSettings,
    steady: SteadyRules,
    on_item: Callable[[LinkItem], None],
    clock: Callable[[], int],
    log: WireLog | None = None,
    haste: float = 1.0,
) -> ScaleLink:
    """Make the link to the scale.

    Args:
        scale: of the settings.
        port: where it is.
        steady: what makes a reading usable.
        on_item: told everything, on the link's thread.
        clock: gives the steady count, in nanoseconds.
        log: takes in everything that passes.
        haste: how much faster than real time the scale goes.
    """
    return ScaleLink(
        port,
        new_parser(scale),
        steady,
        on_item,
        clock=clock,
        rules=link_rules(scale, haste),
        log=log,
    )


def _asked(description: Description) -> AskRules:
    poll = description.poll
    if poll is None:
        return LISTEN
    every_ns = poll.every_ms * _MS
    return AskRules(
        repeat=poll.request, ask=poll.request, first_frame_ns=every_ns, ask_every_ns=every_ns
    )
