"""The mirror image of a case and of a proposal: right and left change places, vertical signs turn."""

import re

TURNING = {"vertical_pd", "axis_deg", "right_hyper_side_pd", "left_hyper_side_pd"}
"""Figures whose sign names a side."""
TURNING_OF_VERTICALS = {"raw_pd", "corrected_pd", "value_pd"}
"""The same, of what stands under ``vertical``."""
EXPECTED = ("before", "correction", "residual")
"""Figures of an expected vertical effect, whose signs name a side."""
_SWAP = {"right": "left", "left": "right", "Right": "Left", "Left": "Right", "RIGHT": "LEFT", "LEFT": "RIGHT"}
_SIDE = re.compile(f"(?<![A-Za-z])({'|'.join(_SWAP)})(?![A-Za-z])")


def mirrored(value, key=""):
    """The mirror image of a JSON value."""
    if isinstance(value, str):
        return _SIDE.sub(lambda found: _SWAP[found[0]], value)
    if isinstance(value, dict) and value.get("answers") == "vertical" and "before" in value:
        turned = {name: None if value[name] is None else 0.0 - value[name] for name in EXPECTED}
        return mirrored({name: inner for name, inner in value.items() if name not in EXPECTED}, key) | turned
    if isinstance(value, dict):
        return {mirrored(name): mirrored(inner, f"{key}.{name}") for name, inner in value.items()}
    if isinstance(value, list):
        return [mirrored(inner, key) for inner in value]
    name = key.rpartition(".")[2]
    turning = name in TURNING or (".vertical." in key and name in TURNING_OF_VERTICALS)
    if turning and value is not None:
        return 0.0 - value
    return value


def in_one_order(proposal):
    """The proposal with everything sorted that names a side, so that two can be compared.

    A finding that names right and left in one sentence names the right first: its words are compared, not their order.
    """
    findings = [
        finding
        | {"text": _words(finding["text"]), "settle": _words(finding["settle"])}
        | {"facts": {name: _words(fact) for name, fact in finding["facts"].items()}}
        for finding in proposal["findings"]
    ]
    return proposal | {
        "findings": _sorted(findings),
        "options": _sorted(map(_option, proposal["options"])),
        "additions": _sorted(map(_option, proposal["additions"])),
        "combined": proposal["combined"] and _option(proposal["combined"]),
        "principles": _sorted(proposal["principles"]),
    }


def _option(option):
    return option | {name: _sorted(option[name]) for name in ("doses", "notices", "expected")}


def _words(said):
    return sorted(re.findall(r"[^\s,.;:()]+", said.lower())) if isinstance(said, str) else said


def _sorted(items):
    return sorted(items, key=lambda item: [str(item.get(name)) for name in ("id", "code", "eye", "muscle", "text")])
