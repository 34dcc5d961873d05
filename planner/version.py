"""The engine's version, printed beside every dose.

It changes with every change in an answer: the last figure for words and notes, the middle one for a dose or a rule, the
first for the form of the JSON. A plan is compared as a whole with what the same version makes of it again, by the phone
before it is signed and by the server when it arrives.
"""

from typing import Final

ENGINE_VERSION: Final = "2.0.0"
