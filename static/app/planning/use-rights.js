/** What the person who is here may write in this clinic. */
import { useObservable } from '../observable.js';
import { session } from '../session/session.js';
import { mayTakeBack, mayWrite } from './rights.js';

/** @returns {{role: string | undefined, write: (kind: string) => boolean, takeBack: (kind: string) => boolean}} */
export function useRights() {
  const role = useObservable(session).clinic?.role;
  return { role, write: (kind) => mayWrite(role, kind), takeBack: (kind) => mayTakeBack(role, kind) };
}
