import { argumentProblem } from './argumentProblem.js';

/** The instant that a query asks about. @throws GraphQLError for one that is still to come. */
export function pastMoment(asOf: Date | string | null | undefined, nowMs: number): number {
  const atMs = asOf ? new Date(asOf).getTime() : nowMs;
  if (atMs <= nowMs) return atMs;
  throw argumentProblem('"asOf" lies in the future; what will be is not recorded.');
}
