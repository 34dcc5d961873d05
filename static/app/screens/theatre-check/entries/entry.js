/** The entry that fits the way in which a step is answered. */
import { html } from '../../../vendor/preact.js';
import { AnswerEntry } from './answer.js';
import { ConsentEntry } from './consent.js';
import { MarkEntry } from './mark.js';
import { PaperEntry } from './paper.js';
import { WristbandEntry } from './wristband.js';

/** @type {Record<string, any>} */
const BY_WAY = {
  answer: AnswerEntry,
  allergy: AnswerEntry,
  wristband: WristbandEntry,
  'wristband number': WristbandEntry,
  paper: PaperEntry,
  consent: ConsentEntry,
  mark: MarkEntry,
};

/** @param {{step: any, held: Record<string, any>, onHold: (held: Record<string, any>) => void}} props */
export function StepEntry({ step, held, onHold }) {
  return html`<${BY_WAY[step.way]} step=${step} held=${held} onHold=${onHold} />`;
}
