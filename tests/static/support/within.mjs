/** What another tab is told arrives when the machine has time: `promise` is asked again until it is kept. */
import { setTimeout as rest } from 'node:timers/promises';

const PATIENCE_MS = 20_000;

/** @param {() => unknown} promise throws while it is not kept */
export async function within(promise, patience_ms = PATIENCE_MS) {
  for (const end = Date.now() + patience_ms; ; await rest(10)) {
    try {
      return await promise();
    } catch (error) {
      if (Date.now() > end) throw error;
    }
  }
}
