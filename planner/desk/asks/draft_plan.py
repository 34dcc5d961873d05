"""An option, made into a plan."""

from __future__ import annotations

from planner import plans
from planner.canonical import digest
from planner.codec import read, write
from planner.desk.fields import Fields
from planner.errors import Fault, Refused


def ask(fields: Fields) -> object:
    """A ``Plan``; ``other_examination`` if the digest is not that of the case's examination."""
    choice = read(plans.Choice, fields)
    if digest(fields["case"]["examination"]) != choice.examination_digest:
        text = "The examination is not the one that the digest names."
        raise Refused(Fault(code="other_examination", text=text, field="examination_digest"))
    return write(plans.plan(choice))
