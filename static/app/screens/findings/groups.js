/** Findings in the groups in which a surgeon looks for them. The engine's order stands within a group; nothing is judged here. */

/** @typedef {{code: string, text: string, strength?: string, settle?: string, provenance: {mark: string, source: string}, facts: Record<string, string | number>}} Finding */

/** How codes of a group begin; a code that no group knows stands in the first. */
const GROUPS = [
  { title: 'Straight ahead', begin: [] },
  { title: 'From gaze to gaze', begin: ['pattern', 'comitance', 'vertical_comitance', 'greatest', 'oblique'] },
  { title: 'Vertical, torsion, head', begin: ['three_step', 'weak', 'torsion', 'bilateral', 'dissociated', 'head', 'posture', 'turn', 'tilt', 'chin'] },
  { title: 'Movement and earlier surgery', begin: ['limited', 'duction', 'forced', 'restriction', 'palsy', 'previous', 'consecutive', 'slipped'] },
  { title: 'Sight', begin: ['only_seeing', 'poorer', 'seeing', 'vision', 'acuity'] },
];

/** @param {Finding} finding */
export const isSuggestedCode = ({ code }) => code === 'icd10';

/** That something was not measured is no finding to look for. @param {Finding} finding */
export const isMissing = ({ code }) => code.endsWith('_not_measured');

/** @param {Finding} finding */
const groupOf = ({ code }) => Math.max(0, GROUPS.findIndex(({ begin }) => begin.some((word) => code.startsWith(word))));

/**
 * @param {Finding[]} findings
 * @returns {{title: string, findings: Finding[]}[]} without those that hold nothing; suggested codes and what was not measured stand apart
 */
export const grouped = (findings) =>
  GROUPS.map(({ title }, index) => ({ title, findings: findings.filter((finding) => !isSuggestedCode(finding) && !isMissing(finding) && groupOf(finding) === index) })).filter(
    (group) => group.findings.length > 0,
  );
