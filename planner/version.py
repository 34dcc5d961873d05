"""The engine's version, printed beside every dose.

The last figure changes with a correction that alters no dose, the middle one with a dose or a rule, the first with the
form of the JSON.
"""

from typing import Final

ENGINE_VERSION: Final = "1.0.0"
