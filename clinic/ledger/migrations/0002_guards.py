"""The database itself refuses to change or remove records."""

from django.db import migrations
from django.db.backends.base.schema import BaseDatabaseSchemaEditor
from django.db.migrations.state import StateApps

from clinic.ledger import guards


def put_up(_apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    guards.put_up(schema_editor.connection)


def take_down(_apps: StateApps, schema_editor: BaseDatabaseSchemaEditor) -> None:
    guards.take_down(schema_editor.connection)


class Migration(migrations.Migration):
    dependencies = [("ledger", "0001_initial")]
    operations = [migrations.RunPython(put_up, take_down)]
