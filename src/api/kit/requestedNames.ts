import type { GraphQLResolveInfo } from 'graphql';
import { namesBelow } from './askedFields.js';
import { askedBelow } from './lookAhead.js';

/** Names of the fields asked for directly below the field being resolved. */
export const requestedNames = (info: GraphQLResolveInfo): Set<string> =>
  new Set(namesBelow(askedBelow(info)));
