"""The API and the administration answer in the language that is asked for, where there is a catalogue for it.

The shell's pages do not: they are one for all languages, for the service worker keeps them, and the app speaks itself.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from django.middleware.locale import LocaleMiddleware

if TYPE_CHECKING:
    from django.http import HttpRequest, HttpResponseBase

SPEAKING = ("/api/", "/administration/")


class Language(LocaleMiddleware):
    """Django's own, for the addresses that speak."""

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """Leave all others as they are."""
        if not request.path_info.startswith(SPEAKING):
            return self.get_response(request)  # type: ignore[no-any-return]
        return super().__call__(request)  # type: ignore[no-any-return]
