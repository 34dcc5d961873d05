from django.db import migrations

from clinic.ledger import guards


def put_up(apps, schema_editor):
    guards.put_up(schema_editor.connection)


def take_down(apps, schema_editor):
    guards.take_down(schema_editor.connection)


class Migration(migrations.Migration):
    dependencies = [("ledger", "0001_initial")]
    operations = [migrations.RunPython(put_up, take_down)]
