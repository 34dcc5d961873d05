"""The mirror image of a case and of a proposal: right and left change places, vertical signs turn."""

import re

TURNING = {"vertical_pd", "axis_deg", "vertical.raw_pd", "vertical.corrected_pd"}
"""Figures whose sign names a side, by name or by the name of what they are in and their own."""
REMAINDERS = {"left_mm"}
"""Names in which ``left`` is no side."""
_SWAP = {"right": "left", "left": "right", "Right": "Left", "Left": "Right", "RIGHT": "LEFT", "LEFT": "RIGHT"}
_SIDE = re.compile(f"(?<![A-Za-z])({'|'.join(_SWAP)})(?![A-Za-z])")


def mirrored(value, key=""):
    """The mirror image of a JSON value."""
    if isinstance(value, str):
        return _SIDE.sub(lambda found: _SWAP[found[0]], value)
    if isinstance(value, dict):
        return {
            name if name in REMAINDERS else mirrored(name): mirrored(inner, f"{key}.{name}")
            for name, inner in value.items()
        }
    if isinstance(value, list):
        return [mirrored(inner, key) for inner in value]
    names = key.rsplit(".", 2)
    if value is not None and (names[-1] in TURNING or ".".join(names[-2:]) in TURNING):
        return 0.0 - value
    return value


def in_one_order(proposal):
    """The proposal with everything sorted that names a side, so that two can be compared.

    A finding that names right and left in one sentence names the right first: its words are compared, not their order.
    """
    findings = [
        finding | {name: sorted(finding[name].split()) for name in ("text", "settle")}
        for finding in proposal["findings"]
    ]
    options = [
        option | {"doses": _sorted(option["doses"]), "notices": _sorted(option["notices"])}
        for option in proposal["options"]
    ]
    return proposal | {"findings": _sorted(findings), "options": _sorted(options)}


def _sorted(items):
    return sorted(items, key=lambda item: [str(item.get(name)) for name in ("id", "code", "eye", "muscle", "text")])
