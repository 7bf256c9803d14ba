import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Info, Query, Resolver } from 'type-graphql';
import { documentOutline } from '../publishedDocuments/documentOutline.js';
import { publishedDocuments } from '../publishedDocuments/publishedDocuments.js';
import { checkedAddress } from './checkedAddress.js';
import { waysOut } from './waysOut.js';
import { WaysOut } from './waysOut.type.js';

@Resolver()
export class WaysOutResolver {
  @Query(() => WaysOut, {
    description: 'How other programs read from the collection, each with a token of its own.',
  })
  waysOut(
    @Arg('address', () => String, {
      defaultValue: 'http://localhost:4600',
      description: 'Scheme, host and port to print examples with.',
    })
    address: string,
    @Info() { schema }: GraphQLResolveInfo,
  ): WaysOut {
    return {
      ways: waysOut(checkedAddress(address)),
      documents: publishedDocuments.map(({ document, ...shown }) => ({
        ...shown,
        needs: documentOutline(schema, document).needs,
      })),
    };
  }
}
