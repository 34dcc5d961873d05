/** One examination: its main readings, and the plans and cards made from it. */
import { dateWords } from '../../parts/calendar/date.js';
import { useRights } from '../../planning/use-rights.js';
import { html } from '../../vendor/preact.js';
import { PlanLine } from './plan-line.js';
import { mainReadings } from './readings.js';
import { TakeBack } from './take-back.js';

/** @param {{patient: string, sitting: import('./line.js').Sitting}} props */
export function SittingCard({ patient, sitting: { examination, versions, plans } }) {
  const { body, id, author } = examination;
  const rights = useRights();
  const home = `#/patients/${patient}`;
  return html`<article class="card stack" aria-label=${`Examination of ${dateWords(body.examined_on)}`}>
    <header>
      <h3>${dateWords(body.examined_on)}</h3>
      <p class="small soft">
        by ${author}, ${body.readings.length} ${body.readings.length === 1 ? 'reading' : 'readings'}${versions > 1 && `, corrected ${versions - 1}×`}
      </p>
    </header>
    <dl class="reading-tiles">
      ${mainReadings(body.readings).map(
        (reading) => html`<div class="reading-tile" key=${reading.label}><dt>${reading.label}</dt><dd>${reading.words}</dd></div>`,
      )}
    </dl>
    ${plans.map((planned) => html`<${PlanLine} key=${planned.plan.id} patient=${patient} planned=${planned} />`)}
    <div class="buttons">
      <a class="button" href=${`${home}/findings/${id}`}>Findings</a>
      <a class="button" href=${`${home}/options/${id}`}>Options</a>
      ${rights.write('examination') && html`<a class="button" href=${`${home}/measure/${id}`}>Correct or add</a>`}
      <${TakeBack} record=${examination} what="this examination" />
    </div>
  </article>`;
}
