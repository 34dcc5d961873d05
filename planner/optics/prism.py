"""A ray through a prism: what it turns by, for its material and the way it is held.

With apex angle A and refractive index n, light that stays in the plane of refraction is turned by

    Prentice position    asin(n sin A) - A                  (the ray square to one face)
    frontal position     asin(n sin(A - asin(sin A / n)))   (the rear face square to the line to the target)
    minimum deviation    2 asin(n sin(A / 2)) - A           (the ray symmetrical)

Glass prisms are labelled for the Prentice position and plastic ones for the frontal position, so A follows from the
label. Two prisms stacked in one direction, faces together, act as one with the sum of their apex angles.
"""

from __future__ import annotations

from collections.abc import Callable
from math import asin, atan2, cos, fsum, sin

from planner.errors import Fault, Refused
from planner.optics.degrees import angle_of, pd_of
from planner.provenance import Mark, Provenance
from planner.records.technique import Held, Material

RAY_MODEL = Provenance(
    mark=Mark.COMPUTED,
    source=(
        "Snell's law for glass n = 1.523 and acrylic n = 1.49; agrees with Thompson & Guyton, Ophthalmology "
        "1983;90:204-10 (40 Δ glass held frontal acts as 32 Δ, 5 and 40 Δ glass stacked as 59 Δ)"
    ),
)
CALIBRATION = Provenance(mark=Mark.PUBLISHED, source="Thompson & Guyton, Ophthalmology 1983;90:204-10")


INDEX = {Material.GLASS: 1.523, Material.ACRYLIC: 1.49}
LABELLED_FOR = {Material.GLASS: Held.PRENTICE, Material.ACRYLIC: Held.FRONTAL}


def turned_pd(labels_pd: tuple[float, ...], material: Material, held: Held) -> float:
    """What one prism, or several stacked in one direction, neutralises: prism dioptres, labels not negative.

    Refused with ``total_internal_reflection`` where no light comes through.
    """
    if len(labels_pd) == 1 and held is LABELLED_FOR[material]:
        return labels_pd[0]
    apex = fsum(_APEX[material](angle_of(label_pd), INDEX[material]) for label_pd in labels_pd)
    try:
        turn = _TURN[held](apex, INDEX[material])
    except ValueError as error:  # the sine of an angle of refraction would exceed 1
        raise _no_light(labels_pd, material, held) from error
    return pd_of(turn)


def _apex_from_prentice(turn: float, index: float) -> float:
    return atan2(sin(turn), index - cos(turn))


def _apex_from_frontal(turn: float, index: float) -> float:
    behind = asin(sin(turn) / index)
    return behind + atan2(sin(behind), index - cos(behind)) if turn else 0.0


def _prentice(apex: float, index: float) -> float:
    return asin(index * sin(apex)) - apex


def _frontal(apex: float, index: float) -> float:
    return asin(index * sin(apex - asin(sin(apex) / index)))


def _minimum_deviation(apex: float, index: float) -> float:
    return 2 * asin(index * sin(apex / 2)) - apex


_APEX: dict[Material, Callable[[float, float], float]] = {
    Material.GLASS: _apex_from_prentice,
    Material.ACRYLIC: _apex_from_frontal,
}
_TURN: dict[Held, Callable[[float, float], float]] = {
    Held.FRONTAL: _frontal,
    Held.PRENTICE: _prentice,
    Held.MINIMUM_DEVIATION: _minimum_deviation,
}


def _no_light(labels_pd: tuple[float, ...], material: Material, held: Held) -> Refused:
    prisms = " and ".join(f"{label_pd:g} Δ" for label_pd in labels_pd)
    return Refused(
        Fault(
            code="total_internal_reflection",
            text=f"No light comes through {prisms} of {material.value}, {held.words}: it is reflected inside",
            field="second_pd" if len(labels_pd) > 1 else "held",
            value=f"{labels_pd[-1]:g}",
            allowed="one prism before each eye, or weaker prisms together",
        )
    )
