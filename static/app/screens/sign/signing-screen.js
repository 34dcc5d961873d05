/** One stage of signing at a time, with the way back. */
import { ask } from '../../engine/engine.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { faultsIn } from '../../planning/use-answer.js';
import { keepCard } from '../../planning/kept-cards.js';
import { session } from '../../session/session.js';
import { localTime } from '../../store/envelope.js';
import { drafts, saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { Caution } from './caution.js';
import { Differs } from './differs.js';
import { Drawing } from './drawing.js';
import { Ready } from './ready.js';
import { UNSIGNED, acknowledge, cautionsLeft, compared, draw, drawAgain, stageOf } from './signing.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */
/** @typedef {import('./signing.js').Signing} Signing */

const TITLES = { cautions: 'Caution', draw: 'Draw the plan again', differs: 'Drawing and plan differ', sign: 'Sign the plan' };

/**
 * @param {object} props
 * @param {LedgerRecord} props.patient
 * @param {LedgerRecord} props.plan
 * @param {import('../../planning/standing.js').Standing} props.standing
 * @param {(signature: string) => void} props.onSigned with the id of the signature
 */
export function SigningScreen({ patient, plan, standing, onSigned }) {
  const draftName = `signing/${plan.id}`;
  const [signing, setSigning] = useState(/** @type {Signing} */ (drafts.get(draftName) ?? UNSIGNED));
  const [faults, setFaults] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));
  const [isBusy, setBusy] = useState(false);
  const { option } = plan.body;
  const signer = session.get().user?.full_name ?? '';
  const toOption = `/patients/${patient.patient}/options/${plan.body.examination_id}/${option.id}`;
  const stage = stageOf(option, signing);
  const left = cautionsLeft(option, signing);
  const changed = [...(standing.examinationChanged ? ['examination'] : []), ...(standing.patientChanged ? ["patient's details"] : [])];

  /** @param {Signing} next */
  const keep = (next) => {
    drafts.keep(draftName, next);
    setSigning(next);
    setFaults([]);
  };

  /** @param {() => Promise<void>} work */
  const during = async (work) => {
    setBusy(true);
    try {
      await work();
    } catch (error) {
      setFaults(faultsIn(error));
    } finally {
      setBusy(false);
    }
  };

  const compare = () => during(async () => keep(compared(signing, await ask('compare_drawing', { option, drawn: signing.drawn }))));

  const sign = () =>
    during(async () => {
      const body = await ask('sign', {
        plan: plan.body,
        plan_id: plan.id,
        drawn: signing.drawn,
        acknowledged: signing.acknowledged,
        signer_name: signer,
        signed_at: localTime(new Date()),
      });
      const signature = await saveRecord('signature', { patient: patient.patient, supersedes: [], body, draft: draftName });
      drafts.drop(`planning/${plan.body.examination_id}`);
      // The signature stands whether or not its card can be made ahead; the card screen makes it again.
      await keepCard(signature).catch(() => {});
      onSigned(signature.id);
    });

  const steps = {
    cautions: { next: { label: 'I have read this caution', act: () => keep(acknowledge(signing, left[0]?.code)) } },
    draw: { next: { label: isBusy ? 'Comparing' : 'Compare with the plan', act: compare, blocked: signing.drawn.length === 0 ? 'Touch a muscle that is to be operated.' : undefined } },
    differs: { next: { label: 'Draw again', act: () => keep(drawAgain(signing)) }, also: { label: 'Change the plan', to: toOption } },
    sign: { next: { label: isBusy ? 'Signing' : 'Sign', act: sign, blocked: changed.length > 0 ? 'The plan is out of date.' : isBusy ? 'One moment' : undefined }, also: { label: 'Draw again', act: () => keep(drawAgain(signing)) } },
  };

  return html`<${Frame} key=${`${stage} ${left[0]?.code ?? ''}`} title=${TITLES[stage]} patient=${patient.body} back=${toOption} layout=${stage === 'differs' || stage === 'sign' ? 'wide' : 'column'} ...${steps[stage]}>
    <div class="stack">
      <${FaultList} faults=${faults} title="Not signed. What you drew is kept." />
      ${changed.length > 0 &&
      html`<${Notice} level="stop">
        <p>The ${changed.join(' and the ')} changed after this plan was made, so it cannot be signed. <a href=${`#/patients/${patient.patient}`}>Go to the case</a> and plan again.</p>
      <//>`}
      ${stage === 'cautions' && html`<${Caution} caution=${left[0]} number=${signing.acknowledged.length + 1} count=${signing.acknowledged.length + left.length} />`}
      ${stage === 'draw' && html`<${Drawing} drawn=${signing.drawn} onDraw=${(/** @type {any} */ place, /** @type {import('./signing.js').Done | null} */ done) => keep(draw(signing, place, done))} />`}
      ${stage === 'differs' && html`<${Differs} plan=${plan} signing=${signing} />`}
      ${stage === 'sign' && html`<${Ready} plan=${plan} signer=${signer} />`}
    </div>
  <//>`;
}
