"""From a recipe to millimetres, and from millimetres to what they are expected to do.

``recipe``    which muscles an operation moves, and which printed column or series doses each
``rows``      reading a column: on a row, in a band, between rows, at its last row
``rounding``  to the half millimetres that a ruler can set
``effect``    the way back: what a dose corrects
``steps``     from the reading to the table's figure as sentences with their sources
``addition``  what the engine adds to the table's figure, and why
``widest``    the most that may be done at all
``setting``   the table's figure, what is added, what the surgeon set: what is to be done
``place``     where the muscle is attached before and after
``draft``     all of it for one recipe and one situation

The rule that carries the tables (common practice): a muscle done at the amount of a row corrects half of that row's
deviation, so ``n`` muscles answer a deviation ``D`` at the row of ``2 D / n``: two muscles at the row itself, one at
the row of twice the angle, three at two thirds, four at half. A series of one operation answers ``D`` itself.
"""
