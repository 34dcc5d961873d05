/** Tells that an examination was corrected since, and leads to the newer version. */
import { useObservable } from '../../observable.js';
import { Notice } from '../../parts/notice/notice.js';
import { heads, history } from '../../store/heads.js';
import { records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';

/** @param {{examination: import('../../store/envelope.js').LedgerRecord, screen: string}} props `screen`: the part of the route that shows it */
export function Newer({ examination, screen }) {
  const all = useObservable(records);
  const family = new Set(history(all, examination.id).map(({ id }) => id));
  const current = heads(all, 'examination', examination.patient).filter(({ id }) => family.has(id));
  if (current.some(({ id }) => id === examination.id)) return null;
  const [newest] = current;
  return html`<${Notice} level="caution">
    ${newest
      ? html`<p>This examination was corrected since. <a href=${`#/patients/${examination.patient}/${screen}/${newest.id}`}>Show the corrected one</a></p>`
      : html`<p>This examination was taken back. Do not plan from it.</p>`}
  <//>`;
}
