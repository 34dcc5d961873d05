/** The lines of the chart as the engine knows them (planner/records/examination.py, `Acuity`), best first. */
export const ACUITIES = [
  '6/5', '6/6', '6/7.5', '6/9', '6/12', '6/15', '6/18', '6/24', '6/30', '6/36', '6/48', '6/60', '3/60',
  'counting fingers', 'hand movements', 'light perception', 'no light perception',
];
