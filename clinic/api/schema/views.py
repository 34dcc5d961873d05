"""``GET /api/v1/schema``."""

from __future__ import annotations

from drf_spectacular.renderers import OpenApiJsonRenderer
from drf_spectacular.views import SpectacularAPIView
from rest_framework.permissions import AllowAny


class SchemaView(SpectacularAPIView):
    """The description, open to all: it says nothing about anybody."""

    authentication_classes = ()
    permission_classes = (AllowAny,)
    renderer_classes = [OpenApiJsonRenderer]  # noqa: RUF012 - the parent class has a list
