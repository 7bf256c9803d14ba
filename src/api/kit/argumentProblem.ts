import { GraphQLError } from 'graphql';
import { Refusal } from '../../db/refusal.js';

/** A query whose arguments are to be mended; queries have no payload to put problems in. */
export const argumentProblem = (message: string): GraphQLError =>
  new GraphQLError(message, { extensions: { code: 'BAD_USER_INPUT' } });

/** Reads arguments of a query with the means of mutations, whose refusals become its error. */
export function readArguments<Result>(read: () => Result): Result {
  try {
    return read();
  } catch (error) {
    if (error instanceof Refusal) throw argumentProblem(error.message);
    throw error;
  }
}
