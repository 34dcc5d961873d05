/** What matters in vertical, torsional, palsied and restricted cases: folded once more, each with what it holds. */
import { DuctionPad } from '../../../parts/duction-pad/duction-pad.js';
import { Fold } from '../../../parts/fold/fold.js';
import { html } from '../../../vendor/preact.js';
import { Diagnoses } from './diagnoses.js';
import { Dissociated } from './dissociated.js';
import { HeadPosture } from './head-posture.js';
import { breakerWords, diagnosisWords, dissociatedWords, ductionWords, postureWords, torsionWords } from './holds.js';
import { Torsion } from './torsion.js';
import { ThreeStepConditions } from './three-step-conditions.js';

/** @typedef {import('../examination.js').Draft} Draft */

/** @param {{draft: Draft, onNote: (fields: Partial<Draft>) => void}} props */
export function LessOften({ draft, onNote }) {
  return html`<div class="rest-inner">
    <${Fold} title="Diagnoses" holds=${diagnosisWords(draft)}>
      <${Diagnoses} diagnoses=${draft.diagnoses} onChange=${(/** @type {Draft['diagnoses']} */ diagnoses) => onNote({ diagnoses })} />
    <//>
    <${Fold} title="Head posture" holds=${postureWords(draft)}>
      <${HeadPosture} posture=${draft.head_posture} onChange=${(/** @type {Draft['head_posture']} */ head_posture) => onNote({ head_posture })} />
    <//>
    <${Fold} title="Torsion, double Maddox rod" holds=${torsionWords(draft)}>
      <${Torsion} draft=${draft} onNote=${onNote} />
    <//>
    <${Fold} title="Ductions and forced ductions" holds=${ductionWords(draft)}>
      <${DuctionPad}
        ductions=${draft.ductions}
        forced=${draft.forced_ductions}
        onDuctions=${(/** @type {Draft['ductions']} */ ductions) => onNote({ ductions })}
        onForced=${(/** @type {Draft['forced_ductions']} */ forced_ductions) => onNote({ forced_ductions })}
      />
    <//>
    <${Fold} title="Dissociated vertical deviation" holds=${dissociatedWords(draft)}>
      <${Dissociated} draft=${draft} onNote=${onNote} />
    <//>
    <${Fold} title="What breaks the three-step test" holds=${breakerWords(draft)}>
      <${ThreeStepConditions} conditions=${draft.conditions} onChange=${(/** @type {Draft['conditions']} */ conditions) => onNote({ conditions })} />
    <//>
  </div>`;
}
