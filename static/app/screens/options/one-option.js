/** One option in full: every figure may be changed, both figures stay in sight, and it may be chosen. */
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { useObservable } from '../../observable.js';
import { mayWrite } from '../../planning/rights.js';
import { session } from '../../session/session.js';
import { go } from '../../shell/router.js';
import { html, useState } from '../../vendor/preact.js';
import { allOptions } from '../../planning/combining.js';
import { stopsOf } from '../../planning/levels.js';
import { isTaken, ownNote } from '../../planning/own-doses.js';
import { makePlan } from '../../planning/plan-making.js';
import { faultsIn } from '../../planning/use-answer.js';
import { Newer } from '../findings/newer.js';
import { OptionBody } from './option-body.js';
import { Replaces } from './replaces.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @param {{patient: LedgerRecord, examination: LedgerRecord, optionId: string, weighed: ReturnType<typeof import('../../planning/use-planning.js').usePlanning>}} props */
export function OneOption({ patient, examination, optionId, weighed }) {
  const { proposal, faults, isFresh, planning, ownOf } = weighed;
  const [chooseFaults, setChooseFaults] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));
  const role = useObservable(session).clinic?.role;
  const home = `/patients/${patient.patient}`;
  const option = proposal && allOptions(proposal).find(({ id }) => id === optionId);
  const own = ownOf(optionId);
  const note = own && option && isTaken(planning.changes, own.suggestion) ? [ownNote(own.suggestion, own.calibration, (option.table ?? proposal.table).name), planning.note].filter(Boolean).join('\n') : planning.note;

  const choose = async () => {
    if (!weighed.case) return;
    try {
      const plan = await makePlan({ patient, examination, case: weighed.case, option: optionId, note });
      go(`${home}/sign/${plan.id}`);
    } catch (error) {
      setChooseFaults(faultsIn(error));
    }
  };

  const hindrance = () => {
    if (!mayWrite(role, 'plan')) return `Plans are made by surgeons and clinic staff; your role here is ${role ?? 'not known'}.`;
    if (stopsOf(option).length > 0) return 'A stop stands against this: it cannot be chosen.';
    return isFresh ? undefined : 'Calculating';
  };

  /** @returns {import('../../parts/frame/next-step.js').Step | undefined} */
  const next = () => {
    if (!option) return undefined;
    return { label: mayWrite(role, 'signature') ? 'Choose and sign' : 'Choose this plan', act: choose, blocked: hindrance() };
  };

  return html`<${Frame} title=${option?.title ?? 'Option'} patient=${patient.body} back=${`${home}/options/${examination.id}`} layout="wide" next=${next()}>
    <div class="stack">
      <${Newer} examination=${examination} screen="options" />
      <${Replaces} patient=${patient.patient} />
      <${FaultList} faults=${chooseFaults} title="No plan was made. Your figures are kept." />
      ${faults.length > 0 && option && html`<${FaultList} faults=${faults} title="The engine refuses this figure." />`}
      ${option
        ? html`<${OptionBody} option=${option} proposal=${proposal} planning=${planning} onChange=${weighed.set} own=${stopsOf(option).length === 0 ? own : null} />`
        : proposal
          ? html`<p>This option is not among those of the table ${proposal.table.name}. <a href=${`#${home}/options/${examination.id}`}>Show all options</a></p>`
          : html`<${EngineWait} faults=${faults} />`}
    </div>
  <//>`;
}
