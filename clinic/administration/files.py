"""The style sheets and scripts of the administration pages, and of nothing else that is installed."""

from __future__ import annotations

from typing import Any

from django.contrib.staticfiles.finders import AppDirectoriesFinder


class AdministrationFiles(AppDirectoriesFinder):
    """What Django's own pages need; the app's files come from the build."""

    def __init__(self, *_: Any, **__: Any) -> None:  # noqa: ANN401 - Django's signature
        super().__init__(app_names=["django.contrib.admin", "django_otp"])
