/** Own results beside the unaltered dose of one option: both figures of each muscle, what they rest on, and the one way to take them. */
import { OwnEffect } from '../../parts/own-effect/own-effect.js';
import { PastCases } from '../../parts/past-cases/past-cases.js';
import { Why } from '../../parts/why/why.js';
import { html } from '../../vendor/preact.js';
import { placeWords } from '../../words/anatomy.js';
import { mmWords, prismWords } from '../../words/figures.js';
import { saysMore } from '../../planning/own-doses.js';
import { silence } from './own-line.js';

/** @param {{own: import('../../planning/use-own-column.js').OwnOfOption, isPart: boolean, isTaken: boolean, onTake: () => void, note: string}} props `isPart`: of several operations at one sitting; `note`: what the plan will say */
export function OwnColumn({ own: { calibration, suggestion, operations }, isPart, isTaken, onTake, note }) {
  const { doses, does_pd, own_does_pd } = suggestion;
  return html`<section class="own-column stack tight" aria-labelledby="own-column">
    <h2 id="own-column">What your own results say</h2>
    ${isPart && html`<p class="small soft">Of the horizontal part alone, learned where nothing else was done at that sitting.</p>`}
    ${doses.length > 0 && html`<${BothColumns} doses=${doses} />`}
    ${doses.length === 0 && html`<p>${silence(calibration, suggestion)}</p>`}
    ${does_pd &&
    html`<p>The table's doses promise ${prismWords(suggestion.promised_pd)}. In your hands they would correct ${doesWords(does_pd)}.</p>`}
    ${own_does_pd && saysMore(suggestion) && html`<p>The doses of own results would correct ${doesWords(own_does_pd)}.</p>`}
    <${OwnEffect} effect=${calibration.effect} />
    <p class="small">
      From ${calibration.cases} case${calibration.cases === 1 ? '' : 's'}.${' '}
      <${Why} label="How your own results were learned" steps=${[...calibration.statements, ...suggestion.statements]}>How<//>
    </p>
    ${suggestion.statements.length > 0 && doses.length > 0 && html`<ul class="own-said small">${suggestion.statements.map(({ code, text }) => html`<li key=${code}>${text}</li>`)}</ul>`}
    ${doses.length > 0 && saysMore(suggestion) && html`<${Taking} isTaken=${isTaken} onTake=${onTake} note=${note} />`}
    <${PastCases} past=${calibration.past} operations=${operations} />
  </section>`;
}

/** @param {import('../../planning/use-own-column.js').Expected} does */
const doesWords = ({ middle, low, high }) => `${prismWords(middle)}, a single case in 95 of 100 between ${prismWords(low)} and ${prismWords(high)}`;

/** @param {{doses: import('../../planning/own-doses.js').OwnDose[]}} props */
function BothColumns({ doses }) {
  return html`<table class="own-table">
    <thead>
      <tr><th scope="col">Muscle</th><th scope="col">Table</th><th scope="col">Own results</th></tr>
    </thead>
    <tbody>
      ${doses.map(
        (dose) => html`<tr key=${`${dose.eye} ${dose.muscle}`}>
          <th scope="row">${placeWords(dose)}</th>
          <td>${mmWords(dose.proposed_mm)}</td>
          <td>${mmWords(dose.own_mm)}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

/** @param {{isTaken: boolean, onTake: () => void, note: string}} props */
function Taking({ isTaken, onTake, note }) {
  if (isTaken) {
    return html`<div class="stack tight" role="status">
      <p><strong>These figures are set as yours.</strong> What is expected of them on this screen, on the card, on the page for the patient and in the course is by the table, not by your own results.</p>
      <p class="small soft">On the plan: ${note}</p>
    </div>`;
  }
  return html`<div class="stack tight">
    <p class="small soft">The plan keeps the table's doses unless you set these.</p>
    <div class="buttons"><button type="button" class="button" onClick=${onTake}>Set the figures of own results</button></div>
  </div>`;
}
