/** Writing down what was done: a muscle a page, then what went wrong, times, and the whole against the plan. */
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { faultsIn } from '../../planning/use-answer.js';
import { saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { placeWords } from '../../words/anatomy.js';
import { workShort } from '../../words/operation.js';
import { useTheatreLight } from '../card/theatre-light.js';
import { Around } from './around.js';
import { Check } from './check.js';
import { Complications } from './complications.js';
import { MuscleStage } from './muscle-stage.js';
import { AROUND, CHECK, COMPLICATIONS, asPlanned, at, isDifferent, lacking, keyOf, muscleOf, onward, spoken } from './recording.js';
import { Stages } from './stages.js';
import { useRecording } from './use-recording.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

const TITLES = { [COMPLICATIONS]: 'Complications', [AROUND]: 'Anaesthesia and times', [CHECK]: 'Check and save' };

/**
 * @param {object} props
 * @param {LedgerRecord} props.patient
 * @param {import('../../planning/kept-cards.js').Pieces} props.pieces
 * @param {string} props.draftName
 * @param {LedgerRecord[]} props.corrected the records that this one replaces
 * @param {() => void} props.onSaved
 */
export function RecordingScreen({ patient, pieces, draftName, corrected, onSaved }) {
  const { recording, keep, body, surgeons, drafted, review, isReviewed, faults } = useRecording(pieces, draftName, corrected);
  const [isDark, turnLight] = useTheatreLight();
  const [unsaved, setUnsaved] = useState(/** @type {import('../../planning/use-answer.js').FaultFacts[]} */ ([]));
  const frame = { patient: patient.body, back: `/patients/${patient.patient}`, layout: 'wide' };
  if (!recording || !body) return html`<${Frame} title="Operation record" ...${frame}><${EngineWait} faults=${faults} /><//>`;

  const muscle = muscleOf(recording, recording.stage);
  const unspoken = recording.body.muscles.filter((each) => !recording.said.includes(keyOf(each)));
  const save = async () => {
    try {
      await saveRecord('operation', { patient: patient.patient, supersedes: corrected.map(({ id }) => id), body, draft: draftName });
      onSaved();
    } catch (error) {
      setUnsaved(faultsIn(error));
    }
  };

  const next = () => {
    if (muscle) {
      if (!isDifferent(recording, muscle) && muscle.planned) return { label: `As planned: ${workShort(muscle.planned)}`, act: () => keep(asPlanned(recording, recording.stage)) };
      return { label: `Done so: ${workShort(muscle.done)}`, act: () => keep(spoken(recording, recording.stage)), blocked: lacking(muscle) };
    }
    if (recording.stage !== CHECK) return { label: 'Go on', act: () => keep(onward(recording)) };
    const [hindrance] = review?.hindrances ?? [];
    const blocked = unspoken.length > 0 ? `Not spoken of yet: ${unspoken.map(placeWords).join('; ')}.` : !isReviewed ? 'The engine has not looked at it yet.' : hindrance?.text;
    return { label: corrected.length > 0 ? 'Save the correction' : 'Save the record', act: save, blocked };
  };

  return html`<${Frame}
    key=${recording.stage}
    title=${muscle ? placeWords(muscle) : TITLES[recording.stage]}
    ...${frame}
    also=${{ label: isDark ? 'Light' : 'Dark', act: turnLight }}
    next=${next()}
  >
    <div class="theatre operation">
      <${Stages} recording=${recording} card=${`#/patients/${patient.patient}/card/${pieces.signature.id}`} onGo=${(/** @type {string} */ stage) => keep(at(recording, stage))} />
      <div class="operation-page stack">
        <${FaultList} faults=${[...unsaved, ...faults]} title="Not saved. What you wrote is kept on this device." />
        ${muscle && html`<${MuscleStage} recording=${recording} muscle=${muscle} forSclera=${drafted?.for_sclera} onKeep=${keep} />`}
        ${recording.stage === COMPLICATIONS && html`<${Complications} recording=${recording} pointers=${drafted?.pointers ?? []} onKeep=${keep} />`}
        ${recording.stage === AROUND && html`<${Around} recording=${recording} review=${review} surgeons=${surgeons} onKeep=${keep} />`}
        ${recording.stage === CHECK && html`<${Check} body=${body} review=${review} isFresh=${isReviewed} faults=${faults} />`}
      </div>
    </div>
  <//>`;
}
