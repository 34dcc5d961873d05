/** One operated patient in the list of visits: who, which visit and how late, what must not wait, and where to go. */
import { dateWords, shortDateWords } from '../../parts/calendar/date.js';
import { Notices } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';

/** @param {{row: import('./rows.js').Row, mayRecord: boolean}} props */
export function VisitRow({ row: { followed, patient, next, watched }, mayRecord }) {
  const { operation } = followed;
  const { full_name: name, born_on: bornOn, hospital_number: number } = patient.body;
  const home = `#/patients/${operation.patient}`;
  return html`<article class="visit-row card stack tight" aria-label=${name}>
    <header>
      <h3 class="visit-row-name"><a href=${home}>${name}</a></h3>
      <p class="small soft">${shortDateWords(bornOn)}, ${number}; operated on ${dateWords(operation.body.operated_on)}</p>
    </header>
    <p class="visit-row-next"><strong>${next ? next.words : 'No visit is planned any more.'}</strong></p>
    <${Notices} notices=${watched ? [...watched.warnings, ...watched.notices] : []} />
    <div class="buttons">
      ${mayRecord && html`<a class="button" href=${`${home}/visit/${operation.id}/new`}>Record a visit</a>`}
      <a class="button bare" href=${`${home}/course/${operation.id}`}>Course</a>
    </div>
  </article>`;
}
