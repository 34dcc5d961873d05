/**
 * Two current versions of one thing, made on two devices that had not heard of each other. Both are shown, with who and when;
 * a person chooses, and a third record that replaces both settles it. Nothing is merged unseen.
 */
import { momentWords } from '../../parts/calendar/ago.js';
import { Notice } from '../../parts/notice/notice.js';
import { adjustmentKept, adjustmentsOf, writtenBy } from '../../planning/settling.js';
import { useRights } from '../../planning/use-rights.js';
import { session } from '../../session/session.js';
import { ledger, records, saveRecord } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { differences } from './differences.js';

const WORDS = {
  patient: 'the patient’s details',
  examination: 'one examination',
  plan: 'one plan',
  set_up: 'one set-up',
  operating_list: 'one list',
  practice: 'the clinic’s practice',
  operation: 'one operation',
  adjustment: 'one adjustment',
};

/**
 * @param {{kind: string, versions: import('../../store/envelope.js').LedgerRecord[], told?: (body: any) => any}} props `told` puts names in the
 *   place of ids before two bodies are compared
 */
export function Conflict({ kind, versions, told = (body) => body }) {
  const rights = useRights();
  const [problem, setProblem] = useState('');
  const rows = differences(versions.map(({ body }) => told(body)));

  const settle = async (version) => {
    const name = session.get().user?.full_name ?? '';
    const adjustments = kind === 'operation' ? adjustmentsOf(records.get(), version) : [];
    try {
      const saved = await saveRecord(kind, { patient: version.patient, supersedes: versions.map(({ id }) => id), body: writtenBy(kind, version.body, name) });
      for (const adjustment of adjustments) await saveRecord('adjustment', adjustmentKept(adjustment, saved, name));
    } catch (fault) {
      setProblem(fault.text ?? 'This could not be saved on this phone. Both versions are still there.');
    }
  };

  return html`<section class="conflict stack" aria-label=${`${versions.length} versions of ${WORDS[kind]}`}>
    <${Notice} level="caution">
      <p><strong>There are ${versions.length} versions of ${WORDS[kind]}.</strong> They were written on devices that had not heard of each other. Choose the one that is right; the other stays in the record.</p>
      ${kind === 'plan' && html`<p>The chosen plan needs a new signature.</p>`}
      ${kind === 'operation' && html`<p>An adjustment stays with the version that it was recorded for. Until this is settled, a later plan takes what differs as not known.</p>`}
      ${kind === 'examination' && html`<p>Plans made from either version have to be made again.</p>`}
    <//>
    <div class="conflict-versions">
      ${versions.map(
        (version, index) => html`<article class="card stack" key=${version.id} aria-label=${`Version ${index + 1}`}>
          <header>
            <h2>${version.author}</h2>
            <p class="small soft">${momentWords(version.recorded_at)}, on ${deviceWords(version.device)}, ${version.received_at ? `heard by the clinic ${momentWords(version.received_at)}` : 'only on this phone so far'}</p>
          </header>
          <dl class="versions-differ">
            ${rows.map((row) => html`<div key=${row.field}><dt>${row.words}</dt><dd><strong>${row.values[index]}</strong></dd></div>`)}
          </dl>
          ${rows.length === 0 && html`<p class="soft">Both say the same.</p>`}
          ${rights.write(kind) && html`<button type="button" class="button" onClick=${() => settle(version)}>This one is right</button>`}
        </article>`,
      )}
    </div>
    ${problem && html`<p class="field-fault" role="alert">${problem}</p>`}
  </section>`;
}

/** @param {string} device id */
const deviceWords = (device) => (device === ledger.get()?.device ? 'this device' : `the device ending in ${device.slice(-4)}`);
