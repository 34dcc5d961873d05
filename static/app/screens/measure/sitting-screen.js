/** The measuring screen for one sitting: the map, the pad of the open place, and the folded rest. */
import { engineState } from '../../engine/engine.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { PrismPad } from '../../parts/number-pad/number-pad.js';
import { today } from '../../parts/calendar/date.js';
import { go } from '../../shell/router.js';
import { html, useEffect, useRef, useState } from '../../vendor/preact.js';
import { CORRECTION_WORDS, cellWords } from '../../words/reading.js';
import { Conditions } from './conditions.js';
import { HowTaken } from './how-taken.js';
import { MeasureMap } from './measure-map.js';
import { ReadingsHere } from './readings-here.js';
import { Rest } from './rest/rest.js';
import { bodyOf, lacking } from './examination.js';
import { faultsOf, saveExamination } from './saving.js';
import { heldSo, moved, noted, offered, opened, padTouched, turned } from './sitting.js';
import { useEarlier } from './use-earlier.js';
import { useSitting } from './use-sitting.js';

/** @typedef {import('../../store/envelope.js').LedgerRecord} LedgerRecord */

/** @param {{patient: LedgerRecord, corrected?: LedgerRecord, visitPlace?: string}} props `visitPlace`: the visit that it is measured for */
export function SittingScreen({ patient, corrected, visitPlace }) {
  const id = patient.patient;
  const { sitting, change, show, undo, canUndo, discard, draftName } = useSitting(id, corrected, today());
  const [faults, setFaults] = useState(/** @type {import('./saving.js').FaultFacts[]} */ ([]));
  const [saving, setSaving] = useState(false);
  const pad = useRef(/** @type {HTMLElement | null} */ (null));
  const { open, draft } = sitting;
  const next = offered(sitting);
  const missing = lacking(draft);
  const earlier = useEarlier(id);

  useEffect(() => {
    if (open) pad.current?.scrollIntoView({ block: 'nearest' });
  }, [open?.cell]);

  const save = async () => {
    setSaving(true);
    try {
      const body = bodyOf(draft);
      const found = missing.length ? missing : engineState.get().phase === 'ready' ? await faultsOf(body) : [];
      setFaults(found);
      if (found.length === 0) {
        const record = await saveExamination({ patient: id, corrected, body, draftName });
        go(visitPlace ?? `/patients/${id}/findings/${record.id}`, { replace: true });
      }
    } catch (error) {
      setFaults([{ code: 'not_saved', text: 'This phone could not store the examination.', field: '', value: '', allowed: String(error?.text ?? error) }]);
    } finally {
      setSaving(false);
    }
  };

  const how = html`<${HowTaken}
    sitting=${sitting}
    onTurn=${(/** @type {any} */ conditions) => show((now) => turned(now, conditions))}
    onHeld=${(/** @type {any} */ technique) => change((now) => heldSo(now, technique))}
  />`;

  return html`<${Frame}
    title=${corrected ? 'Correct or add' : 'Measure'}
    patient=${patient.body}
    back=${visitPlace ?? `/patients/${id}`}
    layout="wide"
    also=${canUndo ? { label: 'Undo', act: undo } : undefined}
    next=${nextStep()}
  >
    <${FaultList} faults=${faults} />
    <div class=${open ? 'measure measuring' : 'measure'}>
      <div class="measure-left">
        <${Conditions} sitting=${sitting} onTurn=${(/** @type {any} */ conditions) => show((now) => turned(now, conditions))} />
        ${!open && how}
        <${MeasureMap} sitting=${sitting} offered=${next} onOpen=${(/** @type {any} */ cell) => show((now) => moved(now, cell))} />
      </div>
      <div class="measure-right" ref=${pad}>
        ${open
          ? html`<${PrismPad}
              title=${cellWords(open.cell)}
              conditions=${CORRECTION_WORDS[open.cell.correction]}
              how=${how}
              readings=${html`<${ReadingsHere} readings=${draft.readings} cell=${open.cell} onOpen=${(/** @type {any} */ cell) => show((now) => moved(now, cell))} />`}
              entry=${open.entry}
              onTouch=${(/** @type {any} */ touch) => change((now) => padTouched(now, touch))}
              onNext=${() => show((now) => moved(now, offered(now)))}
              onClose=${() => show((now) => moved(now, null))}
            />`
          : html`<${Rest} draft=${draft} earlier=${earlier} faults=${faults} onDiscard=${discard} onNote=${(/** @type {any} */ fields) => change((now) => noted(now, fields))} />`}
      </div>
    </div>
  <//>`;

  function nextStep() {
    if (open) {
      const label = next ? `Next: ${cellWords(next)}` : 'Done';
      return { label, act: () => show((now) => moved(now, offered(now))) };
    }
    if (missing.some(({ code }) => code === 'needs_primary_distance') && next) {
      return { label: `Measure ${cellWords(next)}`, act: () => show((now) => opened(now, next)) };
    }
    return { label: saving ? 'Saving' : corrected ? 'Save the correction' : 'Save measurements', act: save };
  }
}
