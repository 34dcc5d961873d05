/** What was told during a check and must be known to everybody from there on. */
import { Notice } from '../../parts/notice/notice.js';
import { html } from '../../vendor/preact.js';

/** @param {{told: string[]}} props */
export const Told = ({ told }) => told.map((words) => html`<${Notice} key=${words} level="caution"><p>${words}</p><//>`);
