"""The database itself refuses to change or remove entries."""

from django.db import migrations
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps

from clinic.audit.guards import KEYS
from clinic.ledger import guards


def put_up(_apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    guards.put_up(schema_editor.connection, KEYS)


def take_down(_apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    guards.take_down(schema_editor.connection, KEYS)


class Migration(migrations.Migration):
    dependencies = [("audit", "0001_initial"), ("ledger", "0002_guards")]
    operations = [migrations.RunPython(put_up, take_down)]
