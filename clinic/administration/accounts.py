"""Accounts, clinics and roles."""

from __future__ import annotations

from django.contrib import admin
from django.contrib.auth.admin import UserAdmin
from django.contrib.auth.forms import UserCreationForm
from django.http import HttpRequest

from clinic.administration.site import administration
from clinic.people.models import Clinic, Membership, User


class KeptForGood(admin.ModelAdmin):  # type: ignore[type-arg] # generic for the type checker alone
    """Records name their author, clinic and device, so none of these is ever deleted."""

    def has_delete_permission(self, request: HttpRequest, obj: object = None) -> bool:  # noqa: ARG002
        """Never."""
        return False


class NewAccountForm(UserCreationForm):  # type: ignore[type-arg] # the same
    """Name, full name and password."""

    class Meta:
        model = User
        fields = ("username", "full_name")


@admin.register(User, site=administration)
class AccountPage(KeptForGood, UserAdmin):  # type: ignore[type-arg] # the same
    """An account is switched off, not deleted, and keeps its name, which records carry."""

    add_form = NewAccountForm
    list_display = ("username", "full_name", "is_active", "is_superuser", "last_login")
    list_filter = ("is_active", "is_superuser", "memberships__role")
    search_fields = ("username", "full_name")
    ordering = ("username",)
    filter_horizontal = ()
    fieldsets = (
        (None, {"fields": ("username", "password", "full_name")}),
        ("Rights", {"fields": ("is_active", "is_staff", "is_superuser")}),
    )
    add_fieldsets = ((None, {"fields": ("username", "full_name", "password1", "password2")}),)

    def get_readonly_fields(self, request: HttpRequest, obj: object = None) -> tuple[str, ...]:  # noqa: ARG002
        """A name is given once."""
        return ("username", "full_name", "last_login") if obj else ()


@admin.register(Clinic, site=administration)
class ClinicPage(KeptForGood):
    """Clinics by name."""

    list_display = ("name", "id")
    search_fields = ("name",)


@admin.register(Membership, site=administration)
class RolePage(admin.ModelAdmin):  # type: ignore[type-arg] # generic for the type checker alone
    """Who is what in which clinic; a role can be taken away."""

    list_display = ("user", "clinic", "role")
    list_filter = ("clinic", "role")
    search_fields = ("user__username", "user__full_name")
    autocomplete_fields = ("user", "clinic")
