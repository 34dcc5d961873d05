/** The lines of a card as the picture of both eyes takes them. */

/**
 * The card says in words where a tendon is moved to; the picture shows the same with an arrow.
 * @param {{eye: string, muscle: string, operation: string, mm: number | null, offset_words?: string}} line of the engine's `Card`
 */
export const workOf = ({ eye, muscle, operation, mm, offset_words: words = '' }) => ({ eye, muscle, operation, mm, offset: /^moved (up|down)\b/.exec(words)?.[1] ?? null });
