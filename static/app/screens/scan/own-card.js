/** The card of a paper that this device holds itself: with all that became known, and was prepared, after it was signed. */
import { EngineWait } from '../../parts/engine-wait/engine-wait.js';
import { html } from '../../vendor/preact.js';
import { CardFace } from '../card/card-face.js';
import { CardState } from '../card/card-state.js';
import { useCard } from '../card/use-card.js';

/** @param {{pieces: import('../../planning/kept-cards.js').Pieces}} props */
export function OwnCard({ pieces }) {
  const { card, state, faults } = useCard(pieces);
  return html`<${CardState} state=${state} faults=${faults} />
    ${card ? html`<${CardFace} card=${card} />` : state !== 'refused' && html`<${EngineWait} faults=${faults} />`}`;
}
