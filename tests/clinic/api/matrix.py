"""The permission matrix: every address and method, and what each person is answered.

The four members ask for their own clinic (their own device), and then the same four for a clinic (a device) that is
another's; an administrator belongs to no clinic and signed in on no device. Nobody
here signed in a moment ago, so no recovery key is handed out. A number is the status; ``open`` is the
same page for all, with nothing of anybody in it.
"""

from __future__ import annotations

from dataclasses import dataclass

COLUMNS = (
    "surgeon", "orthoptist", "theatre_nurse", "coordinator",
    "other surgeon", "other orthoptist", "other theatre_nurse", "other coordinator",
    "administrator", "anonymous",
)  # fmt: skip

TABLE = """
method  address                                                   own clinic          another's clinic    adm  nobody
get     health                                                    200 200 200 200     200 200 200 200     200  200
get     ready                                                     200 200 200 200     200 200 200 200     200  200
get     metrics                                                   open
get     api/v1/schema                                             200 200 200 200     200 200 200 200     200  200
get     api/v1/session                                            200 200 200 200     200 200 200 200     200  200
post    api/v1/session                                            401 401 401 401     401 401 401 401     401  401
delete  api/v1/session                                            200 200 200 200     200 200 200 200     200  200
post    api/v1/propose                                            200 200 200 200     200 200 200 200     200  401
post    api/v1/clinics/<uuid:clinic>/push                         200 200 200 200     404 404 404 404     404  401
get     api/v1/clinics/<uuid:clinic>/pull                         200 200 200 200     404 404 404 404     404  401
get     api/v1/clinics/<uuid:clinic>/cards/<uuid:signature>.pdf   200 200 200 200     404 404 404 404     404  401
get     api/v1/clinics/<uuid:clinic>/recovery                     403 403 403 403     404 404 404 404     404  401
put     api/v1/clinics/<uuid:clinic>/recovery                     200 200 200 200     404 404 404 404     404  401
get     api/v1/carrying                                           200 200 200 200     200 200 200 200     403  401
get     api/v1/devices                                            200 200 200 200     200 200 200 200     403  401
patch   api/v1/devices/<uuid:device>                              200 200 200 200     404 404 404 404     403  401
delete  api/v1/devices/<uuid:device>                              200 200 200 200     404 404 404 404     403  401
get     /                                                         open
get     sw.js                                                     open
get     manifest.webmanifest                                      open
"""

PULLED = """
kind           surgeon  orthoptist  theatre_nurse  coordinator
patient        yes      yes         yes            yes
examination    yes      yes         no             yes
plan           yes      yes         yes            yes
signature      yes      yes         yes            yes
retraction     yes      yes         yes            yes
dose_table     yes      yes         no             yes
join           yes      yes         yes            yes
theatre_check  yes      yes         yes            yes
check_item     yes      yes         yes            yes
operation      yes      yes         yes            yes
adjustment     yes      yes         yes            yes
practice       yes      yes         yes            yes
set_up         yes      yes         yes            yes
operating_list yes      yes         yes            yes
follow_up      yes      yes         no             yes
notebook       yes      yes         no             yes
own_results    yes      yes         no             yes
"""
"""What a pull hands out of a patient with a plan signed today; of any other patient theatre gets nothing."""


@dataclass(frozen=True)
class Row:
    """One address and method."""

    method: str
    address: str
    expected: dict[str, str]

    @property
    def name(self) -> str:
        """As a test is called."""
        return f"{self.method} {self.address}"


def rows() -> list[Row]:
    """The table."""
    _, *lines = TABLE.strip().splitlines()
    found = []
    for line in lines:
        method, address, *cells = line.split()
        cells = cells * len(COLUMNS) if cells == ["open"] else cells
        found.append(Row(method, "" if address == "/" else address, dict(zip(COLUMNS, cells, strict=True))))
    return found


def pulled() -> dict[str, dict[str, bool]]:
    """By kind and role: whether a pull hands it out."""
    (_, *roles), *lines = (line.split() for line in PULLED.strip().splitlines())
    return {kind: {role: cell == "yes" for role, cell in zip(roles, cells, strict=True)} for kind, *cells in lines}
