import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, Info, Mutation, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { actOf } from '../../api/kit/carryOut.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { ImportListInput } from './import.inputs.js';
import { ImportReport } from './import.type.js';
import { importListInText } from './importListInText.js';

const ImportListPayload = payloadOf(
  'importList',
  'report',
  () => ImportReport,
  'What came of reading the list; null when it was not read.',
);

@Resolver()
export class ImportResolver {
  @Mutation(() => ImportListPayload, {
    description:
      'Brings an existing list of rigs or accessories into the collection: all of it or nothing.',
  })
  importList(
    @Arg('input', () => ImportListInput, { description: 'The list, and how it is written.' })
    input: ImportListInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return importListInText(context.database, actOf(context, info.fieldName), input);
  }
}
