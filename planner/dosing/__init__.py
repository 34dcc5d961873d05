"""From a recipe to millimetres, and from millimetres to what they are expected to do.

``recipe``    which muscles an operation moves, and which printed column doses each
``rows``      reading a column: on a row, between rows, at its last row
``rounding``  to the half millimetres that a ruler can set
``effect``    the way back: what a dose corrects
``steps``     each of these as a sentence with its source
``draft``     all of it for one recipe and one deviation, with the surgeon's changes

The rule that carries everything (common practice): a muscle done at the amount of a row corrects half of that row's
deviation, so ``n`` muscles answer a deviation ``D`` at the row of ``2 D / n``: two muscles at the row itself, one at
the row of twice the angle, three at two thirds, four at half.
"""
