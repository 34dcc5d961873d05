/** What may be told beside the readings: all optional, all folded, the common first, each with what it holds beside its name. */
import { AcuityPad } from '../../../parts/acuity-pad/acuity-pad.js';
import { shortDateWords, today } from '../../../parts/calendar/date.js';
import { Choice } from '../../../parts/choice/choice.js';
import { Field } from '../../../parts/field/field.js';
import { Fold } from '../../../parts/fold/fold.js';
import { VersionPad } from '../../../parts/version-pad/version-pad.js';
import { html } from '../../../vendor/preact.js';
import { EYES, EYE_WORDS } from '../../../words/anatomy.js';
import { EarlierOperations } from './earlier-operations.js';
import { RecordedOperations } from './recorded-operations.js';
import { LessOften } from './less-often.js';
import { acuityWords, countWords, fixingWords, lensWords, lessOftenWords } from './holds.js';
import { Lenses } from './lenses.js';

/** @typedef {import('../examination.js').Draft} Draft */

const FIXING = [
  { value: 'right', words: EYE_WORDS.right },
  { value: 'left', words: EYE_WORDS.left },
  { value: 'either', words: 'either' },
  { value: null, words: 'not said' },
];

const CONSTANCY = [...['constant', 'intermittent', 'latent'].map((value) => ({ value, words: value })), { value: null, words: 'not said' }];

/** @param {{draft: Draft, earlier: import('./taking-over.js').Earlier[], faults: {field: string}[], onDiscard: (() => void) | null, onNote: (fields: Partial<Draft>) => void}} props */
export function Rest({ draft, earlier, faults, onDiscard, onNote }) {
  const unfinished = faults.some(({ field }) => field.startsWith('previous_operations'));
  return html`<section class="rest" aria-label="Optional">
    <h2 class="rest-title">Also, if it matters</h2>
    <${RecordedOperations} earlier=${earlier} operations=${draft.previous_operations} onChange=${(/** @type {Draft['previous_operations']} */ previous_operations) => onNote({ previous_operations })} />
    <${Fold} title="Fixing eye" holds=${fixingWords(draft.fixing_eye)}>
      <${Choice} legend="The patient prefers to fix with" name="fixing" options=${FIXING} value=${draft.fixing_eye} onChange=${(/** @type {string | null} */ fixing_eye) => onNote({ fixing_eye })} />
    <//>
    <${Fold} title="Constant or not" holds=${draft.constancy ?? 'not said'}>
      <${Choice} legend="The deviation is" name="constancy" options=${CONSTANCY} value=${draft.constancy} onChange=${(/** @type {string | null} */ constancy) => onNote({ constancy })} />
    <//>
    <${Fold} title="Visual acuity" holds=${acuityWords(draft)}>
      <div class="stack">
        ${EYES.map((eye) => html`<${AcuityPad} key=${eye} eye=${eye} value=${draft[`acuity_${eye}`]} onChange=${(/** @type {string | null} */ acuity) => onNote({ [`acuity_${eye}`]: acuity })} />`)}
      </div>
    <//>
    <${Fold} title="Versions" holds=${countWords(draft.versions.length, 'muscle graded', 'muscles graded')}>
      <${VersionPad} versions=${draft.versions} onChange=${(/** @type {Draft['versions']} */ versions) => onNote({ versions })} />
    <//>
    <${Fold} title="Spectacles and eyes" holds=${lensWords(draft)}>
      <${Lenses} draft=${draft} onNote=${onNote} />
    <//>
    <${Fold} title="Previous operations" open=${unfinished} holds=${countWords(draft.previous_operations.length, 'muscle', 'muscles')}>
      <${EarlierOperations} operations=${draft.previous_operations} earlier=${earlier} onChange=${(/** @type {Draft['previous_operations']} */ previous_operations) => onNote({ previous_operations })} />
    <//>
    <${Fold} title="Vertical, torsion, palsy, diagnosis" holds=${lessOftenWords(draft)}>
      <${LessOften} draft=${draft} onNote=${onNote} />
    <//>
    <${Fold} title="Note" holds=${draft.note || 'none'}>
      <${Field} label="Note" name="note" rows=${4} value=${draft.note} input=${{ maxlength: 2000 }} onInput=${(/** @type {string} */ note) => onNote({ note })} />
    <//>
    <${Fold} title="Date of the examination" holds=${draft.examined_on === today() ? `today, ${shortDateWords(draft.examined_on)}` : shortDateWords(draft.examined_on)}>
      <${Field} label="Examined on" name="examined_on" value=${draft.examined_on} input=${{ type: 'date', max: today(), required: true }} onInput=${(/** @type {string} */ examined_on) => examined_on && onNote({ examined_on })} />
    <//>
    ${onDiscard && html`<button type="button" class="button bare" onClick=${onDiscard}>Take back everything that is not saved</button>`}
  </section>`;
}
