/** Giving work to another device by a file, with no network: what to give, the words that open it, and the file. */
import { useObservable } from '../../observable.js';
import { Choice } from '../../parts/choice/choice.js';
import { FaultList } from '../../parts/fault-list/fault-list.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { proposeWords } from '../../handover/words.js';
import { find } from '../../store/heads.js';
import { outbox, records } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { sizeWords } from '../status/size-words.js';
import { isOfTheClinic, kindWords, whose } from '../status/what.js';
import { choicesOf, counted } from './choices.js';
import { keep, sharing } from './saving.js';
import { useFile } from './use-file.js';
import { WordsShown } from './words-shown.js';

/** @param {{record?: string}} props `record`: this one alone, with its patient */
export default function HandOver({ record: id }) {
  const all = useObservable(records);
  const choices = choicesOf(all, useObservable(outbox));
  const [chosen, setChosen] = useState(/** @type {import('../../handover/contents.js').Choice} */ (choices[0].count ? 'unsent' : 'all'));
  const [words, setWords] = useState(proposeWords);
  const [given, setGiven] = useState('');
  const { file, count, busy, faults, make } = useFile();
  const one = id ? find(all, id) : undefined;

  if (file) return html`<${Ready} file=${file} count=${count} words=${words} given=${given} onGiven=${setGiven} />`;

  const isEmpty = !id && choices.every((choice) => choice.count === 0);
  const next = {
    label: busy ? 'Sealing the file' : 'Make the file',
    act: () => make(id ? { record: id } : chosen, words),
    blocked: isEmpty ? 'There is nothing on this device to hand over yet.' : undefined,
  };
  return html`<${Frame} title="Hand over by a file" back="/status" next=${next}>
    <div class="stack wide">
      <p>For a stick, a cable or a message between devices of the same clinic. No network is needed.</p>
      <${FaultList} faults=${faults} title="No file was made." />
      ${one
        ? html`<p>${kindWords(one)}: <strong>${whose(all, one)}</strong>${isOfTheClinic(one) ? '' : ', with all that is known of this patient'}.</p>`
        : html`<${Choice} legend="What to give" name="give" options=${choices} value=${chosen} onChange=${setChosen} />`}
      <section class="stack" aria-labelledby="words">
        <h2 id="words">The words that open it</h2>
        <${WordsShown} words=${words} />
        <p>Tell them by mouth to whoever takes the file. They are kept nowhere: without them the file stays closed.</p>
        <div class="buttons"><button type="button" class="button" onClick=${() => setWords(proposeWords())}>Other words</button></div>
      </section>
      <p role="status" class="soft">${busy ? 'Sealing takes a few seconds.' : ''}</p>
    </div>
  <//>`;
}

/** @param {{file: File, count: number, words: string[], given: string, onGiven: (words: string) => void}} props */
function Ready({ file, count, words, given, onGiven }) {
  const save = () => {
    keep(file);
    onGiven(`Saved as ${file.name}, where this browser keeps its downloads.`);
  };
  const share = sharing(file);
  const shareIt = async () => {
    if (await share?.()) onGiven('Handed on.');
  };
  const next = share ? { label: 'Share the file', act: shareIt } : { label: 'Save the file', act: save };
  return html`<${Frame} title="The file is ready" back="/status" next=${next} also=${share ? { label: 'Save it', act: save } : undefined}>
    <div class="stack wide">
      <dl class="facts">
        <div class="fact"><dt>File</dt><dd class="hand-name">${file.name}</dd></div>
        <div class="fact"><dt>Holds</dt><dd>${counted(count)}, ${sizeWords(file.size)}, sealed</dd></div>
      </dl>
      <section class="stack" aria-labelledby="words">
        <h2 id="words">Tell these words by mouth</h2>
        <${WordsShown} words=${words} />
      </section>
      <${Notice} level="note"><p>Your own records stay here and are still sent by this device when it meets the clinic. Whoever comes first, each arrives once.</p><//>
      <p role="status">${given}</p>
    </div>
  <//>`;
}
