import { resolversOfMoneyAndPapers } from './resolversOfMoneyAndPapers.js';
import { resolversOfThings } from './resolversOfThings.js';
import { resolversOfWork } from './resolversOfWork.js';

/** Everything that can be asked and done. */
export const resolvers = [
  ...resolversOfThings,
  ...resolversOfWork,
  ...resolversOfMoneyAndPapers,
] as const;
