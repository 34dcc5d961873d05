"""The mirror image of a case and of a proposal: right and left change places, vertical signs turn."""

import re

VERTICAL = {"vertical_pd"}
_SWAP = {"right": "left", "left": "right", "Right": "Left", "Left": "Right", "RIGHT": "LEFT", "LEFT": "RIGHT"}
_SIDE = re.compile(f"(?<![A-Za-z])({'|'.join(_SWAP)})(?![A-Za-z])")


def mirrored(value, key=""):
    """The mirror image of a JSON value."""
    if isinstance(value, str):
        return _SIDE.sub(lambda found: _SWAP[found[0]], value)
    if isinstance(value, dict):
        return {mirrored(name): mirrored(inner, name) for name, inner in value.items()}
    if isinstance(value, list):
        return [mirrored(inner) for inner in value]
    if key in VERTICAL and value is not None:
        return 0.0 - value
    return value


def in_one_order(proposal):
    """The proposal with everything sorted that names a side, so that two can be compared."""
    options = [
        option | {"doses": _sorted(option["doses"]), "notices": _sorted(option["notices"])}
        for option in proposal["options"]
    ]
    return proposal | {"options": _sorted(options)}


def _sorted(items):
    return sorted(items, key=lambda item: [str(item.get(name)) for name in ("id", "code", "eye", "muscle", "text")])
