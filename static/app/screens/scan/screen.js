/** A paper card read back by its code, with no network: the card itself, and what this device knows of it. */
import { useObservable } from '../../observable.js';
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { Frame } from '../../parts/frame/frame.js';
import { Notice } from '../../parts/notice/notice.js';
import { cardKeys } from '../../planning/card-keys.js';
import { useAnswer } from '../../planning/use-answer.js';
import { records } from '../../store/store.js';
import { html, useState } from '../../vendor/preact.js';
import { CardFace } from '../card/card-face.js';
import { useTheatreLight } from '../card/theatre-light.js';
import { Finder } from './finder.js';
import { OwnCard } from './own-card.js';
import { ownPieces, verdictOn } from './verdict.js';
import { VerdictWords } from './verdict-words.js';

export default function Scan() {
  const [text, setText] = useState('');
  const [isDark, turnLight] = useTheatreLight();
  const { answer, faults } = useAnswer('read_card_code', text ? { text: text.trim(), card_keys: cardKeys() } : null);
  const isRefused = faults.some(({ code }) => !code.startsWith('engine_'));
  const again = () => setText('');
  const light = { label: isDark ? 'Light' : 'Dark', act: turnLight };
  if (!text) {
    return html`<${Frame} title="Scan a card" back="/patients" also=${light}><div class="theatre"><${Finder} onRead=${setText} /></div><//>`;
  }
  const next = { label: 'Scan another', act: again };
  if (isRefused) {
    return html`<${Frame} title="Scan a card" back="/patients" also=${light} next=${next}>
      <div class="theatre"><${Notice} level="stop">
        <p class="void-words">Refused.</p>
        ${faults.map((fault) => html`<p key=${fault.code}>${fault.text}</p>`)}
      <//></div>
    <//>`;
  }
  if (!answer) {
    return html`<${Frame} title="Scan a card" back="/patients" also=${light} next=${next}><${EngineWait} faults=${faults} /><//>`;
  }
  return html`<${FromPaper} found=${answer} next=${next} light=${light} />`;
}

/** @param {{found: any, next: object, light: object}} props `found`: the engine's answer to `read_card_code` */
function FromPaper({ found, next, light }) {
  const { card } = found;
  const all = useObservable(records);
  const verdict = verdictOn(all, found);
  const own = ownPieces(all, verdict);
  return html`<${Frame}
    title=${`From paper: ${card.eyes_words}`}
    patient=${card}
    back="/patients"
    layout="wide"
    corner=${html`<p class="card-corner"><span class="soft">Check word</span> <strong>${card.check_word}</strong></p>`}
    also=${light}
    next=${next}
  >
    <div class="theatre stack">
      <${VerdictWords} verdict=${verdict} isOwn=${own !== null} />
      ${own ? html`<${OwnCard} key=${own.signature.id} pieces=${own} />` : html`<${CardFace} card=${card} />`}
    </div>
  <//>`;
}
