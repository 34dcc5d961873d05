/** Taking a record back: nothing is deleted, a reason is kept beside it. */
import { Field } from '../../parts/field/field.js';
import { Sheet } from '../../parts/sheet/sheet.js';
import { useRights } from '../../planning/use-rights.js';
import { saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';

const SHORTEST = 3;

/** @param {{record: import('../../store/envelope.js').LedgerRecord, what: string}} props */
export function TakeBack({ record, what }) {
  const rights = useRights();
  const [open, setOpen] = useState(false);
  const [reason, setReason] = useState('');
  const [fault, setFault] = useState(/** @type {{text: string, allowed?: string} | undefined} */ (undefined));

  const takeBack = async (event) => {
    event.preventDefault();
    const said = reason.trim();
    if (said.length < SHORTEST) return setFault({ text: 'Say in a few words why.', allowed: '3 to 400 characters' });
    try {
      await saveRecord('retraction', { patient: record.patient, body: { schema: 1, record_id: record.id, reason: said } });
      setOpen(false);
    } catch (problem) {
      setFault({ text: problem.text ?? 'This could not be saved on this phone. Nothing was changed.' });
    }
  };

  if (!rights.takeBack(record.kind)) return null;
  return html`<button type="button" class="button bare" aria-haspopup="dialog" onClick=${() => setOpen(true)}>Take back</button>
    <${Sheet} open=${open} title=${`Take back ${what}`} onClose=${() => setOpen(false)}>
      <form class="stack" onSubmit=${takeBack} novalidate>
        <p>It stays in the record with your reason, and no longer counts. An older version does not come back by itself.</p>
        <${Field} label="Reason" name=${`reason-${record.id}`} value=${reason} onInput=${setReason} fault=${fault} rows=${2} input=${{ maxlength: 400 }} />
        <div class="buttons">
          <button class="button grave">Take back ${what}</button>
          <button type="button" class="button" onClick=${() => setOpen(false)}>Keep it</button>
        </div>
      </form>
    <//>`;
}
