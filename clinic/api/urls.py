"""The addresses of version 1."""

from django.urls import path

from clinic.api.cards.views import CardView
from clinic.api.carrying.views import CarryingView
from clinic.api.devices.views import DevicesView, DeviceView
from clinic.api.propose.views import ProposeView
from clinic.api.pull.views import PullView
from clinic.api.push.views import PushView
from clinic.api.recovery.views import RecoveryView
from clinic.api.schema.views import SchemaView
from clinic.api.session.views import SessionView

urlpatterns = [
    path("session", SessionView.as_view()),
    path("clinics/<uuid:clinic>/push", PushView.as_view()),
    path("clinics/<uuid:clinic>/pull", PullView.as_view()),
    path("clinics/<uuid:clinic>/cards/<uuid:signature>.pdf", CardView.as_view()),
    path("clinics/<uuid:clinic>/recovery", RecoveryView.as_view()),
    path("carrying", CarryingView.as_view()),
    path("devices", DevicesView.as_view()),
    path("devices/<uuid:device>", DeviceView.as_view()),
    path("propose", ProposeView.as_view()),
    path("schema", SchemaView.as_view()),
]
