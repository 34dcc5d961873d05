/** What goes with one muscle, folded under it: sutures, steps, checks and where it may go wrong, each with where it comes from. */
import { Fold } from '../../parts/fold/fold.js';
import { Provenance } from '../../parts/provenance/provenance.js';
import { html } from '../../vendor/preact.js';

const PARTS = /** @type {const} */ ([
  ['sutures', 'Suture and needle'],
  ['steps', 'Steps'],
  ['checks', 'Check before and after'],
  ['pitfalls', 'Where it may go wrong'],
]);

/** @param {{line: any}} props a `CardLine` of the engine */
export function CardSteps({ line }) {
  const parts = PARTS.filter(([name]) => line[name]?.length > 0);
  if (parts.length === 0) return null;
  return html`<${Fold} title="Steps" holds="suture, checks, pitfalls">
    <div class="card-steps">
      ${parts.map(
        ([name, title]) => html`<section key=${name}>
          <h3 class="card-steps-title">${title}</h3>
          ${line[name].map(
            (/** @type {any} */ said) => html`<div key=${said.code}><p>${said.text}</p><${Provenance} of=${said.provenance} /></div>`,
          )}
        </section>`,
      )}
    </div>
  <//>`;
}
