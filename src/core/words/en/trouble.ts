/** The screen that says what failed outside the program. */

export const trouble = {
  tryAgain: 'Try again',
  back: 'Back',
};
