"""Palsy and restriction: which principle applies where a standard table must not be used, and what figures exist.

``principles`` reads the diagnoses and ductions of an examination. A principle that stops forbids the standard doses for
the deviations it concerns; a caution leaves them and warns. Where no figure is published none is made up.

``diagnosed``   one row for each diagnosis that changes how an operation is planned
``sixth``       sixth nerve palsy, by what is left of abduction
``tight``       forced ductions that meet a restriction: the tight muscle is released first
``figures``     the published figures that principles quote
"""

from planner.principles.principles import principles

__all__ = ["principles"]
