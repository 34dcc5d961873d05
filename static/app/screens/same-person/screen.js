/** Two entries side by side that may be of one person: joined with a reason, or left as two. */
import { useObservable } from '../../observable.js';
import { Empty } from '../../parts/empty/empty.js';
import { Frame } from '../../parts/frame/frame.js';
import { useRights } from '../../planning/use-rights.js';
import { apartName } from '../../planning/twins.js';
import { go } from '../../shell/router.js';
import { heads } from '../../store/heads.js';
import { rootOf } from '../../store/joined.js';
import { kept, records } from '../../store/store.js';
import { html } from '../../vendor/preact.js';
import { Joining } from './joining.js';
import { SideBySide } from './side-by-side.js';

/** @param {{patient: string, other: string}} props two patients' ids */
export default function SamePerson({ patient, other }) {
  const all = useObservable(records);
  const may = useRights().write('join');
  const sides = [patient, other].map((id) => heads(all, 'patient', id)[0]);
  const back = `/patients/${patient}`;
  if (sides.some((side) => !side) || patient === other) {
    return html`<${Frame} title="One person?" back=${back}><${Empty} title="Not both are on this phone"><p>The records may not have arrived from the clinic yet.</p><//><//>`;
  }
  const areOne = rootOf(all, patient) === rootOf(all, other);
  const keepApart = () => {
    kept.keep(apartName(patient, other), true);
    go(back, { replace: true });
  };
  return html`<${Frame} title="One person?" back=${back} layout="wide">
    <div class="stack wide">
      <${SideBySide} sides=${sides} records=${all} />
      ${areOne && html`<p>The two are joined. On the patient’s screen they can be parted again.</p>`}
      ${!areOne && !may && html`<p>The clinic’s staff, a surgeon or a coordinator can join the two.</p>`}
      ${!areOne && may && html`<${Joining} sides=${sides} keepApart=${keepApart} />`}
    </div>
  <//>`;
}
