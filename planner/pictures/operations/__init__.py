"""What each operation looks like on its muscle: a module each, with ``strokes(brush, work)``.

By shape, never by tone alone; the word beside it always says the same. A recession leaves its old insertion behind as a
broken line, a resection crosses out a piece at the front, a tuck folds, a weakening parts.
"""

from planner.pictures.operations import anteriorise, harada_ito, recess, resect, transpose, tuck, weaken
from planner.values.option import Operation

DRAWINGS = {
    Operation.RECESS: recess.strokes,
    Operation.RESECT: resect.strokes,
    Operation.WEAKEN: weaken.strokes,
    Operation.ANTERIORISE: anteriorise.strokes,
    Operation.TRANSPOSE: transpose.strokes,
    Operation.HARADA_ITO: harada_ito.strokes,
    Operation.TUCK: tuck.strokes,
}
