/** The clinic's own dose tables, as they are listed beside the engine's. The engine checks and reads them; nothing is judged here. */

/** @typedef {{id: string, name: string, caution: string, provenance: {mark: string, source: string}, clinics_own?: boolean}} Listed */

/** @param {any} body of a `dose_table` record @returns {Listed} */
export const listedTable = ({ id, name, caution, origin }) => ({
  id,
  name,
  caution,
  provenance: { mark: origin.mark, source: `${origin.publication}, ${origin.place}` },
  clinics_own: true,
});

/**
 * The engine's tables, then the clinic's; an id of the engine's own is never another's.
 * @param {Listed[]} engines
 * @param {any[]} bodies of the clinic's current tables
 * @returns {Listed[]}
 */
export const withClinics = (engines, bodies) => [...engines, ...bodies.filter(({ id }) => !engines.some((table) => table.id === id)).map(listedTable)];
