/** What was done by signed plans, newest first: what is open of it stands above everything else of the case. */
import { AdjustWindow } from '../../parts/adjust-window/adjust-window.js';
import { momentWords } from '../../parts/calendar/ago.js';
import { dateWords } from '../../parts/calendar/date.js';
import { useRights } from '../../planning/use-rights.js';
import { html } from '../../vendor/preact.js';
import { placeWords } from '../../words/anatomy.js';
import { workShort } from '../../words/operation.js';
import { FollowedLine } from './followed-line.js';
import { TakeBack } from './take-back.js';

/** @typedef {import('../../planning/operations.js').Operated} Operated */

/** @param {{patient: string, operated: Operated[]}} props in the order in which they were done */
export function OperatedList({ patient, operated }) {
  const rights = useRights();
  if (operated.length === 0) return null;
  const heading = `operations-${patient}`;
  return html`<section class="stack" aria-labelledby=${heading}>
    <h2 id=${heading}>Operations</h2>
    ${operated.toReversed().map(({ operation, adjustment, open }) => {
      const { body } = operation;
      const home = `#/patients/${patient}`;
      return html`<article class="card stack tight" key=${operation.id} aria-label=${`Operation of ${dateWords(body.operated_on)}`}>
        <header>
          <h3>${dateWords(body.operated_on)}</h3>
          <p class="small soft">${body.surgeon_name}${body.complications?.length > 0 && `, ${body.complications.map((/** @type {any} */ each) => each.complication).join(', ')}`}</p>
        </header>
        <ul class="plan-line-doses">
          ${body.muscles.map((/** @type {any} */ muscle) => html`<li key=${placeWords(muscle)}>${placeWords(muscle)}: <strong>${workShort(muscle.done ?? null)}</strong></li>`)}
        </ul>
        ${adjustment && html`<p>${adjustment.body.moved.length > 0 ? 'Adjusted' : 'Tied as it was'}, ${momentWords(adjustment.body.adjusted_at)}</p>`}
        ${open &&
        html`<${AdjustWindow} window=${open}>
          ${rights.write('adjustment') && html`<a class="button" href=${`${home}/adjust/${operation.id}`}>Record the adjustment</a>`}
        <//>`}
        <${FollowedLine} operation=${operation} />
        <div class="buttons">
          <a class="button" href=${`${home}/operation/${body.signature_id}`}>Operation note</a>
          <${TakeBack} record=${adjustment ?? operation} what=${adjustment ? 'this adjustment' : 'this operation record'} />
        </div>
      </article>`;
    })}
  </section>`;
}

/** The way to the record of a signed plan that has none yet. @param {{signature: import('../../store/envelope.js').LedgerRecord, isOperated: boolean}} props */
export function ToOperation({ signature, isOperated }) {
  const rights = useRights();
  if (!isOperated && !rights.write('operation')) return null;
  return html`<a class="button" href=${`#/patients/${signature.patient}/operation/${signature.id}`}>${isOperated ? 'Operation note' : 'Record the operation'}</a>`;
}
