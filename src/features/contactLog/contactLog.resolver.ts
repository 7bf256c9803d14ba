import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, Info, Mutation, Resolver } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { actOf } from '../../api/kit/carryOut.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { ImportContactLogInput } from './contactLog.inputs.js';
import { ContactLogReport } from './contactLog.type.js';
import { importLogInText } from './importLogInText.js';

const ImportContactLogPayload = payloadOf(
  'importContactLog',
  'report',
  () => ContactLogReport,
  'What came of reading the log; null when it was not read.',
);

@Resolver()
export class ContactLogResolver {
  @Mutation(() => ImportContactLogPayload, {
    description:
      'Counts a log of contacts (ADIF) into uses of rigs on the air: all of it or nothing, and nothing twice. Calls of other stations are not kept.',
  })
  importContactLog(
    @Arg('input', () => ImportContactLogInput, { description: 'The log, and which rigs it means.' })
    input: ImportContactLogInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return importLogInText(context.database, actOf(context, info.fieldName), input);
  }
}
