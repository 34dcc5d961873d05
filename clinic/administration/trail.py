"""The audit trail: searched and exported, never changed."""

from __future__ import annotations

from uuid import UUID

from django.contrib import admin
from django.db.models import Q, QuerySet
from django.http import HttpRequest, HttpResponse

from clinic.administration.site import administration
from clinic.audit.export import write_csv
from clinic.audit.models import Entry
from clinic.audit.search import Search, find


@admin.register(Entry, site=administration)
class TrailPage(admin.ModelAdmin):  # type: ignore[type-arg] # generic for the type checker alone
    """Searched by account, or by the id of a patient, a record, a device or a clinic."""

    list_display = ("at", "who", "call", "status", "code", "device", "clinic", "first_position", "last_position")
    list_filter = ("at", "status")
    search_fields = ("who",)
    search_help_text = "An account's name, or the id of a patient, a record, a device or a clinic"
    ordering = ("-at", "-pk")
    actions = ("export",)
    show_full_result_count = False

    def get_search_results(
        self, request: HttpRequest, queryset: QuerySet[Entry], search_term: str
    ) -> tuple[QuerySet[Entry], bool]:
        """An id is looked for wherever it can stand."""
        try:
            wanted = UUID(search_term.strip())
        except ValueError:
            return super().get_search_results(request, queryset, search_term)
        about = find(Search(patient=wanted)) | find(Search(record=wanted))
        return queryset.filter(Q(device=wanted) | Q(clinic=wanted) | Q(pk__in=about.order_by().values("pk"))), False

    @admin.action(description="Export as CSV")
    def export(self, _request: HttpRequest, entries: QuerySet[Entry]) -> HttpResponse:
        """The entries chosen."""
        response = HttpResponse(content_type="text/csv; charset=utf-8")
        response["Content-Disposition"] = 'attachment; filename="audit.csv"'
        write_csv(entries.order_by("at", "pk").iterator(), response)  # type: ignore[arg-type] # it has write()
        return response

    def has_add_permission(self, request: HttpRequest) -> bool:  # noqa: ARG002
        """Never."""
        return False

    def has_change_permission(self, request: HttpRequest, obj: object = None) -> bool:  # noqa: ARG002
        """Never."""
        return False

    def has_delete_permission(self, request: HttpRequest, obj: object = None) -> bool:  # noqa: ARG002
        """Never."""
        return False
