/** Figures as they stand on the screen: a true minus, a thin distance to the unit, mm always with one decimal. */

/** Between a figure and its unit: narrow, and never broken over two lines. */
export const GAP = '\u202f';

/** @param {number} value */
const tidy = (value) => String(Math.round(value * 10) / 10).replace('-', '\u2212');

/** "5.0 mm". @param {number} mm */
export const mmWords = (mm) => `${mmFigure(mm)}${GAP}mm`;

/** "5.0"; a second decimal only where the figure has one. @param {number} mm */
export const mmFigure = (mm) => (Number.isInteger(Math.round(mm * 1000) / 100) ? mm.toFixed(1) : String(mm));

/** "40 Δ", without a sign. @param {number} pd */
export const prismWords = (pd) => `${tidy(Math.abs(pd))}${GAP}Δ`;

/** "+2", "−2", "0": a grade in steps. @param {number} grade */
export const gradeWords = (grade) => (grade > 0 ? `+${grade}` : tidy(grade));
