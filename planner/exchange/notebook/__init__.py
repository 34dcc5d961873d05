"""A surgeon's old cases: a file of rows read, judged row by row, and told to the audit and the calibration.

``columns``  the columns of the file, and the template
``cells``    one cell to a value, or why it is none
``reading``  a file to a ``Notebook`` record's body, with everything that is wrong by row and column
``families`` which muscles an operation moves, and the direction it answers
``promise``  what the table promised for what was done
``judging``  what keeps a notebook from being a record
``telling``  its cases as ``PastCase`` and ``Result``

A file is carried over whole or not at all: leaving out the rows that do not fit would bias what is learned of them.
"""

from planner.exchange.notebook.columns import all_columns, template
from planner.exchange.notebook.judging import hindrances
from planner.exchange.notebook.reading import NotebookReading, read_notebook
from planner.exchange.notebook.telling import Carried, carried_outcomes

__all__ = [
    "Carried",
    "NotebookReading",
    "all_columns",
    "carried_outcomes",
    "hindrances",
    "read_notebook",
    "template",
]
