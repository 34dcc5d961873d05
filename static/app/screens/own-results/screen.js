/** What the surgeon's own results say of the tables, family by family, and beside which of them the surgeon wants to see it. */
import { useObservable } from '../../observable.js';
import { Empty } from '../../parts/empty/empty.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { isOn, turnedSwitch } from '../../planning/own-families.js';
import { faultsIn } from '../../planning/use-answer.js';
import { useOwnFamilies } from '../../planning/use-own-families.js';
import { useRights } from '../../planning/use-rights.js';
import { session } from '../../session/session.js';
import { back } from '../../shell/router.js';
import { saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { Family } from './family.js';

export default function OwnResults() {
  const { surgeon, families, versions, on, operations, waiting, refused, faults } = useOwnFamilies();
  const clinic = useObservable(session).clinic?.name ?? '';
  const maySwitch = useRights().write('own_results');
  const [unsaved, setUnsaved] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));

  /** @param {import('../../planning/own-families.js').Switch} which */
  const turn = async (which) => {
    try {
      const body = { schema: 1, surgeon_name: surgeon, switched_on: turnedSwitch(on, which) };
      await saveRecord('own_results', { patient: versions[0]?.patient, supersedes: versions.map(({ id }) => id), body });
      setUnsaved([]);
    } catch (error) {
      setUnsaved(faultsIn(error));
    }
  };

  return html`<${Frame} title="Own results" back=${back}>
    <div class="own-results stack wide">
      <p>
        What operations of <strong>${surgeon}</strong> at ${clinic} did, against what the table promised for them. It is a second opinion: the table's dose stays as it is. Where you switch it
        on, the options show both side by side, and a figure becomes yours only when you set it.
      </p>
      <${FaultList} faults=${unsaved} title="Not saved. The switch is as it was." />
      ${operations === 0 &&
      html`<${Empty} title="No operation of yours is recorded here yet"><p>Operations count once they are recorded and followed up with a measurement in the weeks that are counted.</p><//>`}
      ${operations > 0 && families.length === 0 && refused === 0 && html`<${EngineWait} faults=${faults} title="The engine cannot read these operations." />`}
      ${families.length > 0 && faults.length > 0 && html`<${FaultList} faults=${faults} title="Some operations could not be read." />`}
      ${families.length > 0 && waiting > 0 && html`<p role="status">${operations - waiting} of ${operations} operations read</p>`}
      ${refused > 0 && html`<p>Not counted anywhere, ${refused}: the engine cannot read the records.</p>`}
      ${waiting === 0 &&
      families.map(
        (own) => html`<${Family} key=${`${own.family} ${own.table}`} own=${own} isOn=${isOn(on, own)} onTurn=${maySwitch ? () => turn({ family: own.family, table: own.table }) : null} />`,
      )}
    </div>
  <//>`;
}
