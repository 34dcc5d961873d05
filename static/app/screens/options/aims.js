/** The surgeon's settings for this case: which angle the plan answers, and an overcorrection that is meant. */
import { Choice } from '../../parts/choice/choice.js';
import { FigureField } from '../../parts/figure-field/figure-field.js';
import { figureWords } from '../../parts/figure-field/figure-words.js';
import { Fold } from '../../parts/fold/fold.js';
import { LIMITS } from '../../parts/number-pad/limits.js';
import { html } from '../../vendor/preact.js';
import { AIMS, isMeasured } from './aim-words.js';

/** @typedef {import('../../planning/use-planning.js').Planning} Planning */

const OVERCORRECTION = { ...LIMITS.overcorrection_pd, decimals: 1, unit: '\u0394' };

/** @param {{planning: Planning, examination: any, onSet: (fields: Partial<Planning>) => void}} props `examination`: the record's body */
export function Aims({ planning: { aim, overcorrection_pd: meant }, examination, onSet }) {
  const holds = [AIMS[aim].words, ...(meant ? [`overcorrected by ${figureWords(meant, OVERCORRECTION)}`] : [])].join(', ');
  return html`<${Fold} title="What the plan aims at" holds=${holds}>
    <div class="stack">
      <${Choice}
        legend="The angle to correct"
        name="aim"
        options=${Object.entries(AIMS).map(([value, { words }]) => ({ value, words, hint: isMeasured(examination, value) ? undefined : 'not measured' }))}
        value=${aim}
        onChange=${(/** @type {string} */ chosen) => onSet({ aim: chosen })}
      />
      <${FigureField}
        label="Overcorrection meant, intermittent exotropia"
        value=${meant || null}
        range=${OVERCORRECTION}
        none="none"
        onChange=${(/** @type {number | null} */ pd) => onSet({ overcorrection_pd: pd ?? 0 })}
      />
    </div>
  <//>`;
}
