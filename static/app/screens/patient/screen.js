/** One patient's home: what has been measured, planned and signed, and the next step. */
import { useObservable } from '../../observable.js';
import { Empty } from '../../parts/empty/empty.js';
import { Frame } from '../../parts/frame/frame.js';
import { useRoomForTwo } from '../../parts/room/room.js';
import { StateWord } from '../../parts/state-word/state-word.js';
import { followedOf } from '../../planning/following.js';
import { useRights } from '../../planning/use-rights.js';
import { drafts, records } from '../../store/store.js';
import { html, useMemo } from '../../vendor/preact.js';
import { PatientList } from '../patients/list.js';
import { EntriesDiffer } from './entries-differ.js';
import { Home } from './home.js';
import { OnePerson } from './one-person.js';
import { lineOf } from './line.js';
import { nextSteps } from './next.js';
import { toVisit } from './to-visit.js';
import { TwinHints } from './twin-hints.js';

/** @param {{patient: string}} props the patient's id */
export default function Patient({ patient: id }) {
  const all = useObservable(records);
  const roomy = useRoomForTwo();
  const rights = useRights();
  const line = useMemo(() => lineOf(all, id), [all, id]);
  if (!line) return html`<${Unknown} />`;

  const unfinished = drafts.names().includes(`examination/${id}`);
  const visit = toVisit(followedOf(all, id), line.progress, drafts.names());
  const steps = nextSteps(id, line.progress, { unfinished, visit, may: rights.write });
  const beside = roomy ? { label: 'Patients', content: html`<${PatientList} current=${id} />` } : undefined;
  return html`<${Frame}
    title="Case"
    patient=${line.patient.body}
    back="/patients"
    layout=${roomy ? 'wide' : 'column'}
    corner=${html`<${StateWord} state=${line.progress.state} />`}
    beside=${beside}
    ...${steps}
  >
    <${TwinHints} patient=${id} records=${all} />
    <${EntriesDiffer} patient=${line.patient} records=${all} />
    <${Home} line=${line} records=${all} />
    <${OnePerson} patient=${id} records=${all} />
  <//>`;
}

function Unknown() {
  return html`<${Frame} title="Not on this phone" back="/patients">
    <${Empty} title="This patient is not on this phone" step=${{ label: 'Show all patients', to: '/patients' }}>
      <p>The record may not have arrived from the clinic yet.</p>
    <//>
  <//>`;
}
