/** Says before the choice that a current plan of this patient would be replaced, and whose signature that ends. */
import { useObservable } from '../../observable.js';
import { momentWords } from '../../parts/calendar/ago.js';
import { Notice } from '../../parts/notice/notice.js';
import { signatureOf } from '../../planning/standing.js';
import { heads } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';

/** @param {{patient: string}} props id */
export function Replaces({ patient }) {
  const all = useObservable(records);
  const signed = heads(all, 'plan', patient).flatMap((plan) => signatureOf(all, plan) ?? []);
  return signed.map(
    (signature) => html`<${Notice} level="caution" key=${signature.id}>
      <p>
        The plan signed by ${signature.body.signer_name} on ${momentWords(signature.body.signed_at)} is current.
        Another choice replaces it, and its card will say so.
      </p>
    <//>`,
  );
}
