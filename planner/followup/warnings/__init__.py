"""What must not wait until the next visit, each a caution with its reason: a module each, ``warnings(care, visited)``.

``slipped``         a rectus that no longer pulls where it was operated
``overcorrection``  too much at once, or a child who squints inwards all the time
``infection``       signs of infection, and the days in which they are looked for

They are limits of teaching, not of a study: each says so, and the local protocol goes before.
"""

from planner.followup.warnings.register import standing_warnings, warnings_of

__all__ = ["standing_warnings", "warnings_of"]
