"""The sentence that stands wherever a dose is shown."""

from typing import Final

DISCLAIMER: Final = "This supports and does not replace the judgement of a licensed surgeon and the local protocol."
