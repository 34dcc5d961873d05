/** All patients of the clinic. */
import { Empty } from '../../parts/empty/empty.js';
import { Frame } from '../../parts/frame/frame.js';
import { Mark } from '../../parts/mark/mark.js';
import { useRoomForTwo } from '../../parts/room/room.js';
import { useRights } from '../../planning/use-rights.js';
import { html } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { PatientList } from './list.js';

export default function Patients() {
  const roomy = useRoomForTwo();
  const rights = useRights();
  const next = rights.write('patient') ? { label: say('New patient'), to: '/patients/new' } : undefined;
  const settings = html`<span class="buttons patients-ways"><a class="button bare" href="#/lists">${say('Lists')}</a>${rights.role !== 'theatre' && html`<a class="button bare" href="#/visits">${say('Visits')}</a>${roomy && html`<a class="button bare" href="#/results">${say('Results')}</a>`}`}<a class="button bare" href="#/scan">${say('Scan a card')}</a><a class="button bare" href="#/settings"><${Mark} name="settings" />${say('Settings')}</a></span>`;
  return html`<${Frame} title=${say('Patients')} layout=${roomy ? 'wide' : 'column'} corner=${settings} next=${next}>
    ${roomy
      ? html`<div class="beside">
          <${PatientList} />
          <div class="beside-detail"><${Empty} title=${say('Choose a patient')}><p>${say('The examinations, plans and cards of the patient show here.')}</p><//></div>
        </div>`
      : html`<${PatientList} />`}
  <//>`;
}
