/**
 * How far the answers to pushes bring this phone in the clinic's feed, in whichever order they come: their runs are joined from
 * where it stands. A pure account; the ledger decides by its own rows whether a step is taken.
 */

/** @typedef {{after: string, cursor: string, more: boolean}} Run  see `clinic/sync/protocol.py` */
/** @typedef {import('../store/exchange.js').Step} Step */

/** @param {string} cursor  where this phone stands */
export function reach(cursor) {
  /** @type {Map<string, Run>} */
  const runs = new Map();
  let at = cursor;
  let isLost = !cursor;
  let isEnd = false;
  return {
    /**
     * @param {Run[]} more
     * @returns {Step | null}  as far as all runs so far lead
     */
    join(more) {
      for (const run of more) runs.set(run.after, run);
      if (isLost) return null;
      const after = at;
      for (let run = runs.get(at); run; run = runs.get(at)) {
        runs.delete(at);
        at = run.cursor;
        isEnd = !run.more;
      }
      return at === after ? null : { after, cursor: at };
    },
    /** A step was not taken: from here on the pull tells. */
    lose() {
      isLost = true;
      isEnd = false;
    },
    /** Whether the feed had nothing behind the last run. */
    isEnd: () => isEnd,
  };
}
