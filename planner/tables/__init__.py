"""The dose tables: one TOML file each, with its provenance; adding one is adding a file.

A file holds a :class:`planner.records.dose_table.DoseTable`: the rows as printed, and where they come from. It is read
by the strict codec and then checked as a table (:mod:`planner.tables.checks`): a bad one is refused, the row named.
The same form, as TOML or JSON, is how a clinic brings its own table (:mod:`planner.tables.clinics_own`)::

    schema = 1
    id = "harbour-clinic"                   # one to four lower-case words joined by hyphens, none of the engine's own
    name = "Harbour clinic"
    caution = "What the source warns of, or for whom these figures do not hold."
    between = "straight line"               # or "bands": rows with deviation_pd and to_pd, nothing between them
    only_as_printed = false                 # true: no operation on one, three or four muscles is derived from it
    one_eye_on_poorer = false               # true: the one-eye columns are meant for the eye that sees less

    # The unit is in the name of a key: _pd prism dioptres, _mm millimetres per muscle from the original insertion.
    # ET: MR recessed, LR resected; XT: LR recessed, MR resected. both: that muscle of both eyes; one: both muscles of
    # one eye. A dash in print is a key left out.
    esotropia = [
        { deviation_pd = 15, both_recess_mm = 3.0, both_resect_mm = 3.5, one_recess_mm = 3.0, one_resect_mm = 3.5 },
        { deviation_pd = 20, both_recess_mm = 3.5, both_resect_mm = 4.5, one_recess_mm = 3.5, one_resect_mm = 4.0 },
    ]
    exotropia = [ ... ]

    outcomes = [                            # may be left out: whom the source operated and how many ended well
        { direction = "eso", patients = 48, from_pd = 65, success_percent = 50, within_pd = 10 },
    ]

    [origin]                                # every key is required
    mark = "published"                      # or "from memory, verify", "common practice"
    publication = "Author, title, journal, year; for a clinic's own figures who keeps them and since when"
    place = "Table 2, page 117"
    place_confirmed = true                  # somebody has held the page beside the rows
    transcribed_by = "who copied the figures"
    transcribed_on = "2026-11-25"
    checked_by = "who compared them with print"
    validity = "for which patients the figures are meant"

Refused, the row named (``esotropia.3.both_recess_mm``): a key or unit that is not of this form; figures outside 0.5 to
15 mm and 1 to 150 Δ; a deviation that does not rise or a dose that falls (``not_rising``); rows more than 10 Δ apart,
bands that do not meet, a column with a hole or of one row, half of a one-eye pair (``gap``); a dose beyond the widest
conventional maximum of its muscle (``above_widest_maximum``). Only a table of the engine's own may bring ``maxima``,
what its source did beyond that: a clinic's table cannot lift a stop.

:func:`table` gives one of the engine's by its id, :func:`tables` all of them, :func:`chosen` the one of a case,
:func:`from_text` a clinic's own from a file's text; :func:`check_own` says what is wrong with a clinic's own.
"""

from planner.tables.choice import chosen
from planner.tables.clinics_own import check_own, from_text
from planner.tables.column import Column, Row
from planner.tables.shelf import read_table, table, tables
from planner.tables.table import Form, Table

__all__ = [
    "Column",
    "Form",
    "Row",
    "Table",
    "check_own",
    "chosen",
    "from_text",
    "read_table",
    "table",
    "tables",
]
