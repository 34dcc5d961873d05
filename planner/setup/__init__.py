"""The set-up sheet: for one plan and one patient, what theatre prepares and why.

:func:`set_up` is the door. ``facts`` gathers what the rules read, ``health`` what all records of the person say that
is warned of, ``figures`` are the figures of common practice and
the clinic's own in their place, ``items`` has one module per item, ``register`` lists them in the order in which they
are decided, ``judging`` lets the clinic's practice and the surgeon's reason stand where no stop forbids it, ``making``
puts the sheet together, ``sewing`` says the same of suture and needle to the card, ``checks`` says what a practice may
hold and ``form`` what it can be made of. ``visits`` are the usual visits after an operation, or the clinic's own.

What has no publication is marked as common practice. Three levels as everywhere: what an item refuses is a stop, and
neither the clinic's practice nor a surgeon's reason passes it.
"""

from planner.setup.checks import check_practice
from planner.setup.form import form
from planner.setup.making import check_overrides, set_up
from planner.setup.sewing import sewing

__all__ = ["check_overrides", "check_practice", "form", "set_up", "sewing"]
