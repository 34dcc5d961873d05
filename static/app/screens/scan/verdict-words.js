/** What this device knows of the paper's card, in words, above the card. */
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';
import { VoidBand } from '../card/void-band.js';

/** @param {{verdict: import('./verdict.js').Verdict, isOwn: boolean}} props `isOwn`: the card below is this device's own */
export function VerdictWords({ verdict: { word, plan, signature }, isOwn }) {
  const link = plan && signature && html`<p><a class="button" href=${`#/patients/${plan.patient}/card/${signature.id}`}>Open the card on this device</a></p>`;
  switch (word) {
    case 'taken back':
      return html`<${VoidBand} word="TAKEN BACK."><p>The plan on this paper, or its signature, was taken back.</p><//>`;
    case 'replaced':
      return html`<${VoidBand} word="REPLACED."><p>A newer plan stands in place of the one on this paper.${signature ? '' : ' It is not signed yet.'}</p>${link}<//>`;
    case 'same':
      return html`<div class="scan-same" role="status"><p><strong>The same as on this device.</strong> The paper's plan is the present signed plan, as far as this device has heard.${isOwn ? ' The card below is this device’s own.' : ''}</p>${link}</div>`;
    case 'another here':
      return html`<${Notice} level="caution"><p><strong>From paper, and this device holds another signed plan of this patient.</strong> Find out which one stands before anything is done.</p>${link}<//>`;
    default:
      return html`<${Notice} level="caution"><p><strong>From paper, not from the ledger.</strong> The seal is your clinic's. Newer versions are unknown here.</p><//>`;
  }
}
