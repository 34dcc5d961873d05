/** The visits that were kept, newest first: what was found beside the alignment, and the way to correct it. */
import { dateWords } from '../../parts/calendar/date.js';
import { Notice, Notices } from '../../parts/notice/notice.js';
import { isMeasuredAnew } from '../../planning/following.js';
import { html } from '../../vendor/preact.js';
import { EYE_WORDS } from '../../words/anatomy.js';
import { TakeBack } from '../patient/take-back.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @param {{records: readonly LedgerRecord[], followed: import('../../planning/following.js').Followed, course: import('./lines.js').Course | null, mayRecord: boolean}} props */
export function KeptVisits({ records, followed, course, mayRecord }) {
  const { operation, visits } = followed;
  // They stand at the head of the course already.
  const standing = new Set(course?.warnings.map(({ text }) => text));
  return html`<section class="stack" aria-label="Visits that were kept">
    <h2>Visits</h2>
    ${visits.length === 0 && html`<p class="soft">None yet.</p>`}
    ${visits.toReversed().map((visit) => {
      const told = course?.visits.find(({ visit: name, seen_on: on }) => name === visit.body.visit && on === visit.body.seen_on);
      return html`<article class="card stack tight" key=${visit.id} aria-label=${`${visit.body.visit}, ${dateWords(visit.body.seen_on)}`}>
        <header>
          <h3>${visit.body.visit}</h3>
          <p class="small soft">${dateWords(visit.body.seen_on)}, by ${visit.author}</p>
        </header>
        ${told && html`<${Notices} notices=${told.warnings.filter(({ text }) => !standing.has(text))} />`}
        ${told?.statements.map((/** @type {any} */ each) => html`<p class="small" key=${each.code}>${each.text}</p>`)}
        ${isMeasuredAnew(records, visit) && html`<${Notice} level="caution"><p>The measurement was changed after this visit was recorded. Correct the visit, so that it counts as it is now.</p><//>`}
        <${Found} body=${visit.body} />
        <div class="buttons">
          ${visit.body.examination_id && html`<a class="button" href=${`#/patients/${operation.patient}/findings/${visit.body.examination_id}`}>Findings</a>`}
          ${mayRecord && html`<a class="button" href=${`#/patients/${operation.patient}/visit/${operation.id}/${visit.id}`}>Correct</a>`}
          <${TakeBack} record=${visit} what="this visit" />
        </div>
      </article>`;
    })}
  </section>`;
}

/** @param {{body: any}} props */
function Found({ body }) {
  const signs = body.infection_signs;
  const lines = [
    body.examination_id ? null : 'Nothing was measured.',
    signs == null ? 'Nobody looked for signs of infection.' : signs.length === 0 ? 'No signs of infection.' : `Signs of infection: ${signs.map(signWords).join('; ')}.`,
    body.stereo_octaves_lost == null ? null : `Near stereoacuity: ${body.stereo_octaves_lost} octaves lost since before surgery.`,
    body.stereo_lost_to_nil ? 'Near stereoacuity: lost to nil since before surgery.' : null,
    body.reoperation ? `Another operation: ${body.reoperation}.` : null,
    body.ahead ? `Visits planned anew: ${body.ahead_reason ?? ''}` : null,
  ].filter(Boolean);
  return html`${lines.map((line) => html`<p class="small" key=${line}>${line}</p>`)}${body.note && html`<p class="as-typed">${body.note}</p>`}`;
}

/** @param {{sign: string, eye?: import('../../words/anatomy.js').Eye | null}} seen */
const signWords = ({ sign, eye }) => (eye ? `${sign}, ${EYE_WORDS[eye]}` : sign);
