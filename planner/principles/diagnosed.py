"""What holds for each diagnosis that changes how an operation is planned; sixth nerve palsy has a module of its own."""

from __future__ import annotations

from dataclasses import dataclass
from types import MappingProxyType

from planner.anatomy import Eye
from planner.principles.figures import FIFTEEN, THYROID_INFERIOR
from planner.provenance import Mark, Provenance
from planner.records.diagnosis import Diagnosed, Diagnosis
from planner.values.option import Answers
from planner.values.principle import Principle
from planner.values.statement import Level, Statement

TEACHING = Provenance(mark=Mark.COMMON_PRACTICE, source="how palsies and restrictions are commonly operated")
MEMORY = Provenance(mark=Mark.FROM_MEMORY, source="how this is taught to be operated")
HORIZONTAL, VERTICAL = Answers.HORIZONTAL, Answers.VERTICAL


@dataclass(frozen=True, kw_only=True)
class Row:
    """One diagnosis: what its principle says, what becomes of the standard doses, and which figures exist."""

    text: str
    level: Level
    concerns: tuple[Answers, ...]
    provenance: Provenance = TEACHING
    figures: tuple[Statement, ...] = ()


ROWS = MappingProxyType(
    {
        Diagnosis.THIRD_NERVE_PALSY: Row(
            text=(
                "Third nerve palsy: several muscles are weak and tables do not hold. Taught are a very large lateral "
                "rectus recession with medial rectus resection, a lateral rectus taken out of action, or a "
                "transposition; by how much is not published here."
            ),
            level=Level.STOP,
            concerns=(HORIZONTAL, VERTICAL),
        ),
        Diagnosis.FOURTH_NERVE_PALSY: Row(
            text=(
                "Fourth nerve palsy: weaken the overacting antagonist, tuck a lax tendon, or recess the other eye's "
                "inferior rectus; torsion is answered by a Harada-Ito. Exclude a palsy of both sides first."
            ),
            level=Level.NOTE,
            concerns=(VERTICAL,),
            figures=(FIFTEEN,),
        ),
        Diagnosis.THYROID_EYE_DISEASE: Row(
            text=(
                "Thyroid eye disease: once it is quiet and the angle stable, recess the tight muscles first and resect "
                "none; adjustable sutures help, for tables are not made for tight muscles."
            ),
            level=Level.STOP,
            concerns=(HORIZONTAL, VERTICAL),
            figures=(THYROID_INFERIOR,),
        ),
        Diagnosis.DUANE_SYNDROME: Row(
            text=(
                "Duane syndrome: recess the tight rectus of the affected eye, the medial for an eso and the lateral "
                "for an exo, or operate the other eye; a resection in the affected eye worsens the retraction. Up- and "
                "downshoots are answered by splitting or recessing the lateral rectus. No dose is published here."
            ),
            level=Level.STOP,
            concerns=(HORIZONTAL,),
        ),
        Diagnosis.BROWN_SYNDROME: Row(
            text=(
                "Brown syndrome: the tight superior oblique is released first, and only for a hypo straight ahead or a "
                "head posture; vertical recti are not dosed against it. No dose is published here."
            ),
            level=Level.STOP,
            concerns=(VERTICAL,),
        ),
        Diagnosis.MOEBIUS_SYNDROME: Row(
            text=(
                "Moebius syndrome: abduction is missing and medial recti are often tight. Release them first, then "
                "think of a transposition. Tables are not made for it."
            ),
            level=Level.STOP,
            concerns=(HORIZONTAL,),
        ),
        Diagnosis.CONGENITAL_FIBROSIS: Row(
            text=(
                "Congenital fibrosis: release the tight muscles as far as they go, and aim at a better head posture; "
                "nothing is resected against a tight muscle. Tables are not made for it."
            ),
            level=Level.STOP,
            concerns=(HORIZONTAL, VERTICAL),
        ),
        Diagnosis.MONOCULAR_ELEVATION_DEFICIENCY: Row(
            text=(
                "Monocular elevation deficiency: if the inferior rectus is tight, recess it first; if the eye moves up "
                "freely by hand, both horizontal recti are moved to the superior rectus. By how much is not published "
                "here."
            ),
            level=Level.STOP,
            concerns=(VERTICAL,),
        ),
        Diagnosis.ORBITAL_FRACTURE: Row(
            text=(
                "Orbital fracture: free what is caught before muscles are operated, and wait for a stable angle; then "
                "release a tight muscle, or operate the other eye to match. Tables are not made for it."
            ),
            level=Level.STOP,
            concerns=(HORIZONTAL, VERTICAL),
        ),
        Diagnosis.PROGRESSIVE_EXTERNAL_OPHTHALMOPLEGIA: Row(
            text=(
                "Progressive external ophthalmoplegia: the muscles go on losing strength and answer less than tables "
                "say; ask what anaesthesia risks."
            ),
            level=Level.CAUTION,
            concerns=(HORIZONTAL, VERTICAL),
        ),
        Diagnosis.MYASTHENIA: Row(
            text=(
                "Myasthenia: treat it first, and operate only an angle that has stayed the same for months; readings "
                "change from hour to hour."
            ),
            level=Level.CAUTION,
            concerns=(HORIZONTAL, VERTICAL),
        ),
        Diagnosis.SKEW_DEVIATION: Row(
            text=(
                "Skew deviation: look for the cause in the brain stem; operate a stable angle only, and expect no "
                "single weak muscle."
            ),
            level=Level.CAUTION,
            concerns=(VERTICAL,),
        ),
        Diagnosis.INTERNUCLEAR_OPHTHALMOPLEGIA: Row(
            text=(
                "Internuclear ophthalmoplegia: adduction is weak though the medial rectus is not; look for the cause "
                "and wait for a stable angle. Tables are not made for it."
            ),
            level=Level.CAUTION,
            concerns=(HORIZONTAL,),
        ),
        Diagnosis.HIGH_MYOPIA: Row(
            text=(
                "Strabismus with high myopia: image the orbits. If the globe has slipped between the superior and "
                "lateral rectus, these are joined above it; recession and resection alone are taught to fail."
            ),
            level=Level.CAUTION,
            concerns=(HORIZONTAL, VERTICAL),
            provenance=MEMORY,
        ),
        Diagnosis.NYSTAGMUS: Row(
            text=(
                "Nystagmus: if a head posture puts the eyes where they are quietest, an operation for the deviation "
                "moves that place; plan both together. No dose for the head posture is published here."
            ),
            level=Level.CAUTION,
            concerns=(HORIZONTAL,),
        ),
    }
)


def principle(diagnosed: Diagnosed) -> Principle | None:
    """What holds for a diagnosis; None where the standard way of planning holds."""
    row = ROWS.get(diagnosed.diagnosis)
    if row is None:
        return None
    return Principle(
        code=code(diagnosed.diagnosis, diagnosed.eye),
        text=row.text,
        provenance=row.provenance,
        facts={} if diagnosed.eye is None else {"eye": diagnosed.eye.value},
        topic=diagnosed.diagnosis.value,
        eye=diagnosed.eye,
        level=row.level,
        concerns=row.concerns,
        figures=row.figures,
    )


def code(diagnosis: Diagnosis, eye: Eye | None) -> str:
    """For example ``principle-sixth_nerve_palsy-left``."""
    name = diagnosis.name.lower()
    return f"principle-{name}-{eye}" if eye else f"principle-{name}"
