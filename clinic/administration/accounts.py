"""Accounts, clinics and roles."""

from __future__ import annotations

from django.contrib import admin, messages
from django.contrib.auth.admin import UserAdmin
from django.contrib.auth.forms import UserCreationForm
from django.db.models import QuerySet
from django.forms import ModelForm
from django.http import HttpRequest
from django.utils import timezone

from clinic.administration.site import administration
from clinic.devices import leaving
from clinic.people.models import Clinic, Membership, User

STILL_TO_COME = "Each device wipes once it meets the network, is unlocked and has sent what waits; see Devices."


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

    actions = ("let_go",)

    def get_readonly_fields(self, request: HttpRequest, obj: object = None) -> tuple[str, ...]:  # noqa: ARG002
        """A name is given once."""
        return ("username", "full_name", "last_login") if obj else ()

    @admin.action(description="Let go: all roles and rights end, all devices send what they hold and wipe")
    def let_go(self, request: HttpRequest, accounts: QuerySet[User]) -> None:
        """The accounts chosen, but one's own."""
        now = timezone.now()
        others = list(accounts.exclude(username=request.user.get_username()))
        for user in others:
            leaving.let_go(user, now=now)
        self.message_user(request, f"Let go: {len(others)}. {STILL_TO_COME}")

    def save_model(self, request: HttpRequest, obj: User, form: ModelForm[User], change: bool) -> None:  # noqa: FBT001 - Django's signature
        """Who is switched off is let go too, and it is said which phones will not hear of it."""
        super().save_model(request, obj, form, change)
        if obj.is_active:
            return
        now = timezone.now()
        leaving.let_go(obj, now=now)
        if waiting := leaving.not_heard_out(obj, now=now):
            names = ", ".join(device.name for device in waiting)
            text = f"Not wiped, and told nothing while the account is switched off: {names}. Switch it on until then."
            self.message_user(request, text, level=messages.WARNING)


@admin.register(Clinic, site=administration)
class ClinicPage(KeptForGood):
    """Clinics by name."""

    list_display = ("name", "id")
    search_fields = ("name",)


@admin.register(Membership, site=administration)
class RolePage(KeptForGood):
    """Who is what in which clinic; a role that is taken away ends, and can be given back."""

    list_display = ("user", "clinic", "role", "ended_at")
    list_filter = ("clinic", "role", "ended_at")
    readonly_fields = ("ended_at",)
    actions = ("take_away", "give_back")
    search_fields = ("user__username", "user__full_name")
    autocomplete_fields = ("user", "clinic")

    @admin.action(description="Take away: it ends at once, and all devices of the person are revoked")
    def take_away(self, request: HttpRequest, roles: QuerySet[Membership]) -> None:
        """The roles chosen."""
        now = timezone.now()
        for role in roles:
            leaving.take_away(role, now=now)
        self.message_user(request, f"Taken away: {len(roles)}. {STILL_TO_COME}")

    @admin.action(description="Give back a role that was taken away")
    def give_back(self, request: HttpRequest, roles: QuerySet[Membership]) -> None:
        """The roles chosen; revoked devices stay revoked."""
        self.message_user(request, f"Given back: {roles.exclude(ended_at=None).update(ended_at=None)}.")
