/** The patients of the clinic, narrowed as one types or chooses a state. */
import { useObservable } from '../../observable.js';
import { AdjustWord } from '../../parts/adjust-window/adjust-window.js';
import { ageWords } from '../../parts/calendar/age.js';
import { shortDateWords, today } from '../../parts/calendar/date.js';
import { Empty } from '../../parts/empty/empty.js';
import { StateWord } from '../../parts/state-word/state-word.js';
import { useTwins } from '../../planning/use-twins.js';
import { records } from '../../store/store.js';
import { syncState } from '../../sync/sync.js';
import { html, useMemo } from '../../vendor/preact.js';
import { say } from '../../words/say.js';
import { narrowing, PAGE } from './narrowing.js';
import { matches } from './match.js';
import { useKeptPlace } from './place.js';
import { Search } from './search.js';
import { worklist } from './worklist.js';

/** @param {{current?: string}} props the id of the patient who is open beside the list */
export function PatientList({ current }) {
  const all = useObservable(records);
  const { typed, state, shown } = useObservable(narrowing);
  const { complete } = useObservable(syncState);
  const place = useKeptPlace();
  const entries = useMemo(() => worklist(all), [all]);
  const twins = useTwins(all);
  const found = entries.filter((entry) => (!state || entry.state === state) && [entry.body, ...entry.also].some((body) => matches(body, typed)));

  if (entries.length === 0) {
    return html`<${Empty} title=${say('No patients on this phone yet')}>
      <p>
        ${complete
          ? say('Your clinic has none either. A new patient can be entered with or without a network.')
          : say('Those of your clinic appear as soon as it is heard. A new patient can be entered at once, with or without a network.')}
      </p>
    <//>`;
  }
  return html`<div class="patient-list" ref=${place}>
    <${Search} entries=${entries} found=${found.length} />
    ${found.length === 0 && html`<${NobodyFits} typed=${typed} />`}
    <ul class="patient-rows">
      ${found.slice(0, shown).map((entry) => html`<${Row} key=${entry.id} entry=${entry} current=${entry.id === current} isTwin=${twins.has(entry.id)} />`)}
    </ul>
    ${found.length > shown &&
    html`<button type="button" class="button" onClick=${() => narrowing.set({ ...narrowing.get(), shown: shown + PAGE })}>${say('Show more ({count} left)', { count: found.length - shown })}</button>`}
  </div>`;
}

/** @param {{entry: import('./worklist.js').Entry, current: boolean, isTwin: boolean}} props `isTwin`: perhaps entered twice */
function Row({ entry, current, isTwin }) {
  const { body } = entry;
  return html`<li>
    <a class="patient-row" href=${`#/patients/${entry.id}`} aria-current=${current ? 'true' : undefined}>
      <span class="patient-row-name"><bdi>${body.full_name}</bdi></span>
      <span class="patient-row-facts" lang="en" dir="ltr">
        <span>${shortDateWords(body.born_on)} (${ageWords(body.born_on, today())})</span>
        <span class="patient-row-number">${[body, ...entry.also].map(({ hospital_number }) => hospital_number).join(' and ')}</span>
      </span>
      <span class="patient-row-state">
        ${entry.toAdjust && html`<${AdjustWord} window=${entry.toAdjust} />`}
        ${isTwin && html`<span class="small">${say('Entered twice?')}</span>`}
        ${entry.conflict && html`<strong class="patient-row-conflict">${say('Two versions')}</strong>`}
        <${StateWord} state=${entry.state} />
      </span>
    </a>
  </li>`;
}

/** @param {{typed: string}} props */
function NobodyFits({ typed }) {
  return html`<${Empty} title=${say('Nobody fits')}>
    <p>${typed ? say('No patient on this phone has a name, number or birth date like “{typed}”.', { typed }) : say('No patient on this phone has come to this point.')}</p>
  <//>`;
}
