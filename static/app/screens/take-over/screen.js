/** Taking the work of another device from a file, with no network. All of it is taken, or nothing. */
import { useObservable } from '../../observable.js';
import { momentWords } from '../../parts/calendar/ago.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Field } from '../../parts/field/field.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { checkHandOver, takeHandOver } from '../../handover/taking.js';
import { session } from '../../session/session.js';
import { ledger } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { toldOf } from './told.js';

/** @typedef {import('../../handover/taking.js').Taken} Taken */

export default function TakeOver() {
  const { clinic } = useObservable(session);
  const [file, setFile] = useState(/** @type {{name: string, bytes: Uint8Array} | null} */ (null));
  const [words, setWords] = useState('');
  const [busy, setBusy] = useState(false);
  const [faults, setFaults] = useState(/** @type {import('../../parts/fault-list/fault-list.js').FaultFacts[]} */ ([]));
  const [taken, setTaken] = useState(/** @type {Taken | null} */ (null));

  /** @param {() => Promise<void>} work */
  const during = async (work) => {
    setBusy(true);
    setFaults([]);
    try {
      await work();
    } catch (/** @type {any} */ fault) {
      setFaults([{ code: fault.code ?? 'not_taken', text: fault.text ?? 'The file could not be read. Nothing was taken from it.' }]);
    } finally {
      setBusy(false);
    }
  };

  /** @param {HTMLInputElement} input */
  const choose = (input) =>
    during(async () => {
      setFile(null);
      const [picked] = input.files ?? [];
      if (!picked) return;
      const bytes = new Uint8Array(await picked.arrayBuffer());
      input.value = '';
      checkHandOver(bytes, clinic?.id ?? '');
      setFile({ name: picked.name, bytes });
    });

  const take = (/** @type {Event} */ event) => {
    event.preventDefault();
    const open = ledger.get();
    if (busy || !file || !open) return;
    during(async () => setTaken(await takeHandOver({ ledger: open, role: clinic?.role ?? '', bytes: file.bytes, passphrase: words })));
  };

  if (taken) return html`<${Done} taken=${taken} />`;
  const blocked = !file ? 'Choose the file first.' : !words.trim() ? 'Enter the words that you were told.' : undefined;
  return html`<${Frame} title="Take over from a file" back="/status" next=${{ label: busy ? 'Opening the file' : 'Take it over', form: 'take-over', blocked: busy ? undefined : blocked }}>
    <form id="take-over" class="stack wide" onSubmit=${take} novalidate>
      <${FaultList} faults=${faults} title="Nothing was taken over." />
      <label class="field">
        <span class="field-label">The file</span>
        <span class="field-hint">Made by “Hand over by a file” on a device of ${clinic?.name}. Its name ends in .ppcarry.</span>
        <input class="input" type="file" onChange=${(/** @type {any} */ event) => choose(event.currentTarget)} />
      </label>
      ${file && html`<p role="status">Chosen: <strong class="hand-name">${file.name}</strong></p>`}
      <${Field}
        label="The six words"
        name="words"
        hint="As you were told them, with a space between two."
        value=${words}
        onInput=${setWords}
        input=${{ autocapitalize: 'none', autocorrect: 'off', spellcheck: false }}
      />
      <p role="status" class="soft">${busy ? 'Opening takes a few seconds.' : ''}</p>
    </form>
  <//>`;
}

/** @param {{taken: Taken}} props */
function Done({ taken }) {
  const [first, ...rest] = toldOf(taken);
  return html`<${Frame} title="Taken over" back="/status" next=${{ label: 'See the patients', to: '/patients' }}>
    <div class="stack wide">
      <p role="status"><strong>${first}</strong></p>
      ${rest.map((line) => html`<p key=${line}>${line}</p>`)}
      <${Notice} level="note"><p>The file was made ${momentWords(taken.made_at)}. Taking it again does no harm. Remove it from the stick when it is needed no more.</p><//>
    </div>
  <//>`;
}
