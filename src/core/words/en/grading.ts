/** While a take is graded. */

export const grading = {
  naming: 'Naming every note …',
  progress: 'Grading',
};
