import {
  getNamedType,
  TypeInfo,
  visit,
  visitWithTypeInfo,
  type DocumentNode,
  type GraphQLSchema,
} from 'graphql';
import { TokenAllowance } from '../readTokens/tokenAllowance.js';

export interface DocumentOutline {
  /** What a token must show before the document may be run with it. */
  needs: TokenAllowance[];
  /** Keys of the answer under which stands what somebody wrote. */
  textKeys: ReadonlySet<string>;
}

const neededByType: Record<string, TokenAllowance> = {
  MoneyAmount: 'MONEY',
  Party: 'PEOPLE',
  Place: 'PLACES',
};
const neededByField: Record<string, TokenAllowance> = { placeName: 'PLACES', venue: 'PLACES' };

/** What a document asks for, as the schema knows it: nobody has to remember to say so. */
export function documentOutline(schema: GraphQLSchema, document: DocumentNode): DocumentOutline {
  const needs = new Set<TokenAllowance>();
  const textKeys = new Set<string>();
  const types = new TypeInfo(schema);
  visit(
    document,
    visitWithTypeInfo(types, {
      Field: ({ name, alias }) => {
        const typeName = getNamedType(types.getType())?.name ?? '';
        const needed = neededByType[typeName] ?? neededByField[name.value];
        if (needed) needs.add(needed);
        if (typeName === 'String') textKeys.add((alias ?? name).value);
      },
    }),
  );
  return { needs: Object.values(TokenAllowance).filter((each) => needs.has(each)), textKeys };
}
