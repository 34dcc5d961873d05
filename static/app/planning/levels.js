/** Options and notices sorted by the level that the engine gave them. */

/** @typedef {{level: string, code: string, text: string}} Notice */

/** @param {{notices: Notice[]}} said */
export const stopsOf = ({ notices }) => notices.filter(({ level }) => level === 'stop');

/** @param {{notices: Notice[]}} said */
export const cautionsOf = ({ notices }) => notices.filter(({ level }) => level === 'caution');

/** Whether it has to be seen before anything else is read. @param {{level: string}} notice */
export const isGrave = ({ level }) => level !== 'note';
