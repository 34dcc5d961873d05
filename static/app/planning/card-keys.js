/** The clinic's card keys on this device, the newest first: sealed like a patient's data, and taken from each greeting of the server. */
import { onHeard, server, session } from '../session/session.js';
import { kept } from '../store/store.js';

const NAME = 'card keys';

/** @returns {string[]} */
export const cardKeys = () => kept.get(NAME) ?? [];

/** Begins to keep what the server hands out. */
export function startKeepingCardKeys() {
  session.subscribe(note);
  // The greeting is at hand once what was heard has been taken in.
  onHeard(() => setTimeout(note));
}

function note() {
  const { phase, clinic } = session.get();
  const told = server.lastCardKeys().get(clinic?.id ?? '');
  if (phase !== 'open' || !told || told.join() === cardKeys().join()) return;
  kept.keep(NAME, told);
}
