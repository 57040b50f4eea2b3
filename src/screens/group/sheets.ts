/** Where make-up sheets of an assignment are printed and marked. */

/** Stands before the name of somebody from whom nothing came: his only answers are on paper. */
const ON_PAPER = 'paper:';

/** The learner that a name on the list stands for as long as nothing came from him. */
export const paperLearner = (name: string): string => `${ON_PAPER}${name}`.slice(0, 80);

/** The name of such a learner; null for one who hands in by himself. */
export const paperName = (learner: string): string | null =>
  learner.startsWith(ON_PAPER) ? learner.slice(ON_PAPER.length) : null;

export const makeUpAddress = (assignment: string, learner: string): string =>
  `/print/make-up/${assignment}/${encodeURIComponent(learner)}`;

export const marksAddress = (assignment: string, sheet: string): string => `/marks/${assignment}/${sheet}`;
