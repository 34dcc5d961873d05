/** The three ways in which a head may be held. Sides are the patient's. */
export const POSTURES = [
  { field: 'turn', legend: 'Face turned', words: { right: "to the patient's right", left: "to the patient's left" } },
  { field: 'tilt', legend: 'Head tilted', words: { right: 'to the right shoulder', left: 'to the left shoulder' } },
  { field: 'chin', legend: 'Chin', words: { up: 'up', down: 'down' } },
];
