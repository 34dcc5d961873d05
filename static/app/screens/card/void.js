/** What makes a card void, in one unmistakable way: above everything, before any figure. */
import { useObservable } from '../../observable.js';
import { momentWords } from '../../parts/calendar/ago.js';
import { Notice } from '../../parts/notice/notice.js';
import { signatureOf, standingOf } from '../../planning/standing.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { VoidBand } from './void-band.js';

/** @param {{pieces: import('../../planning/kept-cards.js').Pieces}} props */
export function Void({ pieces: { plan, signature } }) {
  const all = useObservable(records);
  const { retraction, successors, examinationChanged, patientChanged } = standingOf(all, plan, signature);
  if (retraction) {
    return html`<${VoidBand} word="TAKEN BACK."><p>${retraction.body.reason} (${retraction.author}, ${momentWords(retraction.recorded_at)})</p><//>`;
  }
  if (successors.length > 0) {
    return html`<${VoidBand} word="REPLACED.">
      ${successors.map((successor) => html`<${Successor} key=${successor.id} plan=${successor} signature=${signatureOf(all, successor)} />`)}
    <//>`;
  }
  const changed = [...(examinationChanged ? ['The examination'] : []), ...(patientChanged ? ["The patient's details"] : [])];
  return changed.map((what) => html`<${Notice} key=${what} level="caution"><p>${what} changed after this plan was signed. Compare before relying on the card.</p><//>`);
}

/** @param {{plan: import('../../store/envelope.js').LedgerRecord, signature?: import('../../store/envelope.js').LedgerRecord}} props */
function Successor({ plan, signature }) {
  const home = `#/patients/${plan.patient}`;
  return html`<p>
    A newer plan was made on ${momentWords(plan.recorded_at)} by ${plan.author}. ${' '}
    ${signature ? html`<a href=${`${home}/card/${signature.id}`}>Open its card</a>` : 'It is not signed yet.'}
  </p>`;
}
