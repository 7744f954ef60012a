/** more marks of slips than this in one drawing lie on top of each other: the steps of the lines are left to speak */
export const MOST_MARKS = 400;
