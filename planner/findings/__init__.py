"""What the readings say: one module per finding, each giving a value for the later steps and sentences for people.

``target``            the deviation to be answered; refused where there is none
``aim``               which reading of it the plan answers
``size``              how large, in which direction, horizontal and vertical, and both as one
``constancy``         always there, now and then, or latent
``near_distance``     near against distance, by the patch and +3.00 tests
``response``          what patching and prisms changed
``aca``               AC/A both ways
``accommodative``     what the spectacles take away
``pattern``           A, V, Y, X, lambda
``comitance``         the same in side gaze or not
``greatest``          the gaze of the greatest deviation
``three_step``        the weak cyclovertical muscle, and what breaks the test
``oblique``           over- and underaction of the obliques
``torsion``           by double Maddox rod
``bilateral``         signs of a superior oblique palsy on both sides
``dissociated``       dissociated vertical deviation
``head_posture``      the habitual posture, and whether it fits
``ductions``          limited movement: palsy or restriction
``previous_surgery``  earlier operations, and a muscle that may have slipped
``vision``            which eye sees less, and whether one eye is all the patient has
``icd10``             codes that these suggest

Differences are judged against the measurement error of :mod:`planner.precision`; a finding says how firmly it stands
and what measurement would settle it. Nothing here is a dose. A new finding: DEVELOPERS.md, recipes.
"""

from planner.findings.findings import Findings, find
from planner.findings.target import target

__all__ = ["Findings", "find", "target"]
