"""The addresses of version 1."""

from django.urls import URLPattern, path

from clinic.api.schema.views import SchemaView
from clinic.api.session.views import SessionView

urlpatterns: list[URLPattern] = [
    path("session", SessionView.as_view()),
    path("schema", SchemaView.as_view()),
]
