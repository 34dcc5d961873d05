/** A hint, never an obstacle, that the person may be in the list already. */
import { dateWords } from '../../parts/calendar/date.js';
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';

/** @param {{found: import('./likeness.js').Likeness[]}} props */
export function Likenesses({ found }) {
  return html`<div role="status">
    ${found.map(
      ({ id, body, because }) => html`<${Notice} level="caution" key=${id}>
        <p>
          The same ${because} belongs to <a href=${`#/patients/${id}`}>${body.full_name}</a>, born ${dateWords(body.born_on)}, number ${body.hospital_number}. Is it the
          same person?
        </p>
      <//>`,
    )}
  </div>`;
}
