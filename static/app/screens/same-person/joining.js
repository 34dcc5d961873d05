/** The word of a person that two entries are of one: which stays in front, and how they know. */
import { Field } from '../../parts/field/field.js';
import { go } from '../../shell/router.js';
import { saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';

const SHORTEST = 3;

/** @param {{sides: import('../../store/envelope.js').LedgerRecord[], keepApart: () => void}} props */
export function Joining({ sides, keepApart }) {
  const [front, setFront] = useState(sides[0].patient);
  const [reason, setReason] = useState('');
  const [fault, setFault] = useState(/** @type {{text: string, allowed?: string} | undefined} */ (undefined));
  const behind = /** @type {{patient: string}} */ (sides.find(({ patient }) => patient !== front)).patient;

  const join = async (/** @type {Event} */ event) => {
    event.preventDefault();
    const said = reason.trim();
    if (said.length < SHORTEST) return setFault({ text: 'Say in a few words how you know.', allowed: '3 to 400 characters' });
    try {
      await saveRecord('join', { patient: front, body: { schema: 1, patient_a: front, patient_b: behind, reason: said } });
      return go(`/patients/${front}`, { replace: true });
    } catch (/** @type {any} */ problem) {
      return setFault({ text: problem.text ?? 'This could not be saved on this phone. Nothing was changed.' });
    }
  };

  return html`<form class="stack" onSubmit=${join} novalidate>
    <p>Joined, they stand as one in the list, with all examinations, plans and cards. Nothing is moved or lost, and the joining can be taken back.</p>
    <fieldset class="stack tight entries-front">
      <legend>Show them under</legend>
      ${sides.map(({ patient, body }) => html`<label class="entry-choice" key=${patient}>
        <input type="radio" name="front" value=${patient} checked=${front === patient} onChange=${() => setFront(patient)} />
        <span>${body.full_name}, number ${body.hospital_number}</span>
      </label>`)}
    </fieldset>
    <${Field} label="How do you know?" name="join-reason" value=${reason} onInput=${setReason} fault=${fault} rows=${2} input=${{ maxlength: 400 }} />
    <div class="buttons">
      <button class="button main">They are one person</button>
      <button type="button" class="button" onClick=${keepApart}>They are two people</button>
    </div>
    <p class="small soft">“They are two people” ends the question on this phone alone; other devices may still ask.</p>
  </form>`;
}
