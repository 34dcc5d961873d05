/** Apps that break a promise on purpose, so that the bench can be seen to object: each takes an app's ledger and server, and gives its own. */
import { ServerFault } from '../../../../static/app/session/server.js';

const STEPS_BETWEEN = 6;

const isPush = path => path.endsWith('/push');

export const BROKEN = {
  /** Drops a lost answer, and forgets that it was one. */
  takes_silence_for_yes({ ledger, server }) {
    const call = async (method, path, options) => {
      try {
        return await server.call(method, path, options);
      } catch (error) {
        if (!isPush(path) || !(error instanceof ServerFault) || error.status) throw error;
        const { digest, records } = options.body.parcel ?? options.body;
        return { parcel: digest, results: records.map(({ id }) => ({ id, status: 'accepted', position: 1, received_at: '' })), cursor: null, more: true };
      }
    };
    return { ledger, server: { ...server, call } };
  },

  /** Stores where it stands in the feed, and some steps later what it was given up to there. */
  steps_before_it_stores({ ledger, server }) {
    const takeIn = async page => {
      await ledger.takeIn({ ...page, records: [] });
      for (let step = 0; step < STEPS_BETWEEN; step += 1) await ledger.place();
      await ledger.takeIn({ ...page, removed: [], after: page.cursor });
    };
    return { ledger: { ...ledger, takeIn }, server };
  },

  /** Drops what a restored clinic lacks. */
  takes_a_backup_for_the_whole({ ledger, server }) {
    const startStaging = () => ledger.startStaging({ restored: false });
    return { ledger: { ...ledger, startStaging, noteRestored: async () => {} }, server };
  },
};
