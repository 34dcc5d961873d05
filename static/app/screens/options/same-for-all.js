/** What all options in sight have in common, folded, so that what differs stands out. */
import { Fold } from '../../parts/fold/fold.js';
import { Notices } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';

/** @param {{common: import('./shared.js').Shared, count: number}} props */
export function SameForAll({ common, count }) {
  const { reasons, notices } = common;
  if (reasons.length + notices.length === 0) return null;
  const holds = [countOf(notices, 'caution'), countOf(notices, 'note'), reasons.length && `${reasons.length} ${reasons.length === 1 ? 'reason' : 'reasons'}`];
  return html`<${Fold} title=${`The same for all ${count}`} holds=${holds.filter(Boolean).join(', ')}>
    <div class="stack tight">
      <${Notices} notices=${notices} />
      ${reasons.map((reason) => html`<p class="small" key=${reason.code}>${reason.text}</p>`)}
    </div>
  <//>`;
}

/**
 * "2 cautions", or nothing.
 * @param {{level: string}[]} notices
 * @param {string} level
 */
function countOf(notices, level) {
  const count = notices.filter((notice) => notice.level === level).length;
  return count && `${count} ${level}${count === 1 ? '' : 's'}`;
}
