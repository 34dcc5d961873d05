"""The shell's addresses, all at the root."""

from django.urls import path

from clinic.shell.views import index, service_worker, web_manifest

urlpatterns = [
    path("", index),
    path("sw.js", service_worker),
    path("manifest.webmanifest", web_manifest),
]
