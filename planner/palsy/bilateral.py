"""Signs that a superior oblique palsy is on both sides.

    V pattern               more than 25 Δ
    excyclotorsion          more than 10 degrees by double Maddox rod; in down-gaze the tested cut-off is 20 degrees
    hyper alternates        right hyper on right tilt and left hyper on left tilt; right hyper in left gaze and left
                            hyper in right gaze
    small primary hyper     less than 5 Δ: a second palsy is more often masked

No sign excludes it: in 8 of 92 palsies that looked one-sided the other side showed itself after the operation.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.precision.limits import Direction, difference_limits_pd, limits_of
from planner.precision.steady import steady
from planner.precision.strength import TOLERANCE_PD, sign_strength, threshold_strength, weakest
from planner.provenance import Mark, Provenance
from planner.records.examination import Range
from planner.values.statement import Statement, Strength

V_PATTERN_PD = 25.0
EXCYCLO_DEG = 10.0
EXCYCLO_DOWN_DEG = 20.0
SMALL_HYPER_PD = 5.0
SYDNOR = Provenance(
    mark=Mark.PUBLISHED,
    source=(
        "Sydnor, Seaber & Buckley, Ophthalmology 1982;89:134-8, 33 patients after injury: "
        "V pattern over 25 Δ, excyclotorsion over 10 degrees, hyper that alternates in side gaze"
    ),
)
ON_TILT = Provenance(mark=Mark.FROM_MEMORY, source="hyper that changes side with the head tilt, common teaching")
TESTED_CUT_OFF = Provenance(mark=Mark.PUBLISHED, source="J Pediatr Ophthalmol Strabismus 1993;30:361-7")
DOTAN = Provenance(
    mark=Mark.PUBLISHED, source="Dotan et al., J Pediatr Ophthalmol Strabismus 2014;51:333-6: odds ratio 8.2 below 5 Δ"
)
MASKED = Provenance(mark=Mark.PUBLISHED, source="J Pediatr Ophthalmol Strabismus 1986;23:264-72: 8 of 92 were masked")
COUNTING = Provenance(
    mark=Mark.HOUSE_RULE, source="one clear sign, or two of any strength, make a suspicion; a small hyper counts as one"
)
ENOUGH_SIGNS = 2


class SignName(StrEnum):
    """A sign of a palsy on both sides."""

    V_PATTERN = "large V pattern"
    EXCYCLOTORSION = "large excyclotorsion"
    ALTERNATES_ON_TILT = "hyper alternates with head tilt"
    ALTERNATES_IN_GAZE = "hyper alternates with side gaze"
    SMALL_HYPER = "small hyper in primary position"


class Suspicion(StrEnum):
    """What the signs come to."""

    SUSPECTED = "suspected"
    POSSIBLE = "possible"
    NO_SIGN = "no sign found"
    NOT_TESTED = "not tested"


@dataclass(frozen=True, kw_only=True)
class BilateralEvidence:
    """What was measured, None where not. Horizontals eso +, verticals right hyper +; excyclotorsion + of both eyes."""

    up_horizontal_pd: float | None = None
    down_horizontal_pd: float | None = None
    excyclotorsion_deg: float | None = None
    excyclotorsion_down_deg: float | None = None
    primary_vertical_pd: float | None = None
    right_vertical_pd: float | None = None
    left_vertical_pd: float | None = None
    tilt_right_vertical_pd: float | None = None
    tilt_left_vertical_pd: float | None = None


@dataclass(frozen=True, kw_only=True)
class Sign:
    """A sign that could be judged: whether it is there, and how firmly."""

    name: SignName
    present: bool
    strength: Strength
    statement: Statement


@dataclass(frozen=True, kw_only=True)
class BilateralSigns:
    """All signs that could be judged and what they come to; ``settle`` says what was not measured."""

    signs: tuple[Sign, ...]
    suspicion: Suspicion
    statement: Statement
    settle: tuple[str, ...]


def bilateral_signs(evidence: BilateralEvidence) -> BilateralSigns:
    """The signs in this evidence. For a patient in whom a superior oblique palsy is suspected on one side at least."""
    judged = {
        "Measure the horizontal deviation in up- and down-gaze.": _v_pattern(evidence),
        "Measure the torsion with two Maddox rods, straight ahead and in down-gaze.": _excyclotorsion(evidence),
        "Measure the vertical deviation on both head tilts.": _alternates(
            SignName.ALTERNATES_ON_TILT, evidence.tilt_right_vertical_pd, evidence.tilt_left_vertical_pd
        ),
        "Measure the vertical deviation in right and left gaze.": _alternates(
            SignName.ALTERNATES_IN_GAZE, evidence.left_vertical_pd, evidence.right_vertical_pd
        ),
        "Measure the vertical deviation in primary position.": _small_hyper(evidence),
    }
    signs = tuple(sign for sign in judged.values() if sign)
    suspicion = _suspicion(signs)
    return BilateralSigns(
        signs=signs,
        suspicion=suspicion,
        statement=Statement(
            code="bilateral_superior_oblique",
            text=f"Superior oblique palsy on both sides: {suspicion.value}. No sign excludes it.",
            provenance=COUNTING,
            facts={
                "present": ", ".join(sign.name.value for sign in signs if sign.present),
                "masked": 8.0,
                "masked_of": 92.0,
                "masked_source": MASKED.source,
            },
        ),
        settle=tuple(measure for measure, sign in judged.items() if not sign),
    )


def _suspicion(signs: tuple[Sign, ...]) -> Suspicion:
    if not signs:
        return Suspicion.NOT_TESTED
    present = [sign for sign in signs if sign.present]
    if not present:
        return Suspicion.NO_SIGN
    clear = any(sign.strength is Strength.CLEAR for sign in present)
    return Suspicion.SUSPECTED if clear or len(present) >= ENOUGH_SIGNS else Suspicion.POSSIBLE


def _v_pattern(evidence: BilateralEvidence) -> Sign | None:
    up_pd, down_pd = evidence.up_horizontal_pd, evidence.down_horizontal_pd
    if up_pd is None or down_pd is None:
        return None
    pattern_pd = steady(down_pd - up_pd, 1)
    limits_pd = difference_limits_pd(limits_of(up_pd, Range.DISTANCE), limits_of(down_pd, Range.DISTANCE))
    text = f"V pattern {pattern_pd:g} Δ (over {V_PATTERN_PD:g} Δ suggests both sides)."
    return Sign(
        name=SignName.V_PATTERN,
        present=pattern_pd > V_PATTERN_PD + TOLERANCE_PD,
        strength=threshold_strength(pattern_pd, V_PATTERN_PD, limits_pd),
        statement=Statement(code="bilateral_v", text=text, provenance=SYDNOR, facts={"pattern_pd": pattern_pd}),
    )


def _excyclotorsion(evidence: BilateralEvidence) -> Sign | None:
    ahead_deg, down_deg = evidence.excyclotorsion_deg, evidence.excyclotorsion_down_deg
    measured = [value for value in (ahead_deg, down_deg) if value is not None]
    if not measured:
        return None
    past_tested = down_deg is not None and down_deg > EXCYCLO_DOWN_DEG
    largest_deg = max(measured)
    text = f"Excyclotorsion {largest_deg:g} degrees (over {EXCYCLO_DEG:g} suggests both sides)."
    return Sign(
        name=SignName.EXCYCLOTORSION,
        present=largest_deg > EXCYCLO_DEG,
        strength=Strength.CLEAR if past_tested else Strength.BORDERLINE,
        statement=Statement(
            code="bilateral_torsion",
            text=text,
            provenance=TESTED_CUT_OFF if past_tested else SYDNOR,
            facts={"excyclotorsion_deg": largest_deg},
        ),
    )


def _alternates(name: SignName, right_hyper_side_pd: float | None, left_hyper_side_pd: float | None) -> Sign | None:
    """Right hyper on the one side and left hyper on the other, both beyond chance."""
    if right_hyper_side_pd is None or left_hyper_side_pd is None:
        return None
    strength = weakest(_hyper_strength(right_hyper_side_pd), _hyper_strength(left_hyper_side_pd))
    opposite = right_hyper_side_pd > 0 > left_hyper_side_pd
    sides = f"{_hyper(right_hyper_side_pd)} and {_hyper(left_hyper_side_pd)}"
    text = f"{sides[0].upper()}{sides[1:]}: {name.value}"
    present = opposite and strength is not Strength.CANNOT_TELL
    return Sign(
        name=name,
        present=present,
        strength=strength,
        statement=Statement(
            code="bilateral_alternates",
            text=f"{text}." if present else f"{text}: not shown.",
            provenance=SYDNOR if name is SignName.ALTERNATES_IN_GAZE else ON_TILT,
            facts={"right_hyper_side_pd": right_hyper_side_pd, "left_hyper_side_pd": left_hyper_side_pd},
        ),
    )


def _hyper(vertical_pd: float) -> str:
    if abs(vertical_pd) <= TOLERANCE_PD:
        return "no hyper"
    return f"{'right' if vertical_pd > 0 else 'left'} hyper {abs(vertical_pd):g} Δ"


def _hyper_strength(vertical_pd: float) -> Strength:
    limits = limits_of(vertical_pd, Range.DISTANCE, direction=Direction.VERTICAL)
    return sign_strength(vertical_pd, limits.half_width_pd)


def _small_hyper(evidence: BilateralEvidence) -> Sign | None:
    vertical_pd = evidence.primary_vertical_pd
    if vertical_pd is None:
        return None
    text = (
        f"Hyper {abs(vertical_pd):g} Δ in primary position (under {SMALL_HYPER_PD:g} Δ a masked palsy is more likely)."
    )
    return Sign(
        name=SignName.SMALL_HYPER,
        present=abs(vertical_pd) < SMALL_HYPER_PD - TOLERANCE_PD,
        strength=Strength.BORDERLINE,
        statement=Statement(
            code="bilateral_small_hyper", text=text, provenance=DOTAN, facts={"hyper_pd": abs(vertical_pd)}
        ),
    )
