"""Where requests go: the API, the health answer, and everything else to the app's shell."""

from django.urls import include, path

from clinic.administration.site import administration
from clinic.api.health.views import HealthView, ReadyView
from clinic.metrics.views import metrics

urlpatterns = [
    path("health", HealthView.as_view()),
    path("ready", ReadyView.as_view()),
    path("metrics", metrics),
    path("api/v1/", include("clinic.api.urls")),
    path("administration/", administration.urls),
    path("", include("clinic.shell.urls")),
]

handler400 = "clinic.errors.views.bad_request"
handler403 = "clinic.errors.views.forbidden"
handler404 = "clinic.errors.views.not_found"
handler500 = "clinic.errors.views.server_fault"
