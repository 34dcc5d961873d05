"""How one direction of a reading was taken."""

from __future__ import annotations

from dataclasses import dataclass

from planner.errors import Fault, Refused
from planner.records.technique import Arrangement, Held, Material


@dataclass(frozen=True, kw_only=True)
class Technique:
    """How one direction of a reading was taken; the default is what needs no correction.

    ``second_pd`` is the label of the second prism; the raw reading is the plain sum of both labels.
    ``prism_from_cornea_mm`` is given only for a near reading that is to be corrected for it, with the distance of the
    target from the cornea in ``target_from_cornea_mm``. ``spectacles_d`` is the power of the lenses looked through, in
    the meridian of the reading, the mean of both eyes.
    """

    material: Material = Material.ACRYLIC
    held: Held = Held.FRONTAL
    arrangement: Arrangement = Arrangement.ONE
    second_pd: float = 0.0
    prism_from_cornea_mm: float | None = None
    target_from_cornea_mm: float = 330.0
    spectacles_d: float | None = None


@dataclass(frozen=True)
class Allowed:
    """The range of one figure of a technique and why it ends there."""

    low: float
    high: float
    words: str


ALLOWED = {
    "prism_from_cornea_mm": Allowed(0, 150, "0 to 150 mm"),
    "target_from_cornea_mm": Allowed(200, 1000, "200 to 1000 mm, a near target"),
    "spectacles_d": Allowed(-20, 20, "-20 to +20 D, the lenses the rule was made for"),
}
LARGEST_LABEL_PD = 100.0


def labels_of(raw_pd: float, technique: Technique) -> tuple[float, ...]:
    """The labels of the prisms behind a raw reading, without sign, the larger part first; refuses what cannot be."""
    faults = [*_range_faults(technique), *_sharing_faults(raw_pd, technique)]
    if faults:
        raise Refused(*faults)
    if technique.arrangement is Arrangement.ONE:
        return (abs(raw_pd),)
    return (abs(raw_pd) - technique.second_pd, technique.second_pd)


def _range_faults(technique: Technique) -> list[Fault]:
    faults = []
    for field, allowed in ALLOWED.items():
        value = getattr(technique, field)
        if value is not None and not allowed.low <= value <= allowed.high:
            faults.append(
                Fault(
                    code="out_of_range",
                    text=f"{value:g} is outside the allowed range",
                    field=field,
                    value=f"{value:g}",
                    allowed=allowed.words,
                )
            )
    return faults


def _sharing_faults(raw_pd: float, technique: Technique) -> list[Fault]:
    second_pd = technique.second_pd
    if technique.arrangement is Arrangement.ONE:
        fits, allowed = second_pd == 0, "0: there is one prism"
    else:
        fits, allowed = 0 < second_pd < abs(raw_pd), "more than 0 Δ and less than the reading, which is the sum of both"
    if not fits:
        by = technique.arrangement.words
        text = f"A second prism of {second_pd:g} Δ does not fit a reading of {abs(raw_pd):g} Δ by {by}"
        return [Fault(code="second_prism", text=text, field="second_pd", value=f"{second_pd:g}", allowed=allowed)]
    if max(abs(raw_pd) - second_pd, second_pd) > LARGEST_LABEL_PD:
        text = f"No single prism turns light by more than {LARGEST_LABEL_PD:g} Δ here"
        return [
            Fault(
                code="out_of_range",
                text=text,
                field="raw_pd",
                value=f"{raw_pd:g}",
                allowed=f"prisms of up to {LARGEST_LABEL_PD:g} Δ each",
            )
        ]
    return []
