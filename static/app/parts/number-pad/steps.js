/**
 * The one-touch keys: the usual prism bars (common practice of the trade: horizontal 1 to 45, vertical 1 to 25),
 * filled up with the loose prisms that go with them.
 */
export const STEPS = {
  horizontal: [1, 2, 4, 6, 8, 10, 12, 14, 15, 16, 18, 20, 25, 30, 35, 40, 45, 50],
  vertical: [1, 2, 3, 4, 5, 6, 8, 10, 12, 14, 15, 16, 18, 20, 25, 30, 35, 40],
};
