import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Model } from '../models/model.type.js';
import { changeDatedSerial } from './changeDatedSerial.js';
import { ChangeDatedSerialInput, DatedSerial, RecordDatedSerialInput } from './datedSerial.type.js';
import { recordDatedSerial } from './recordDatedSerial.js';

const asSerial = { field: 'datedSerial', typeName: 'DatedSerial' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'datedSerial', () => DatedSerial, description);
const RecordDatedSerialPayload = payload('recordDatedSerial', 'The dated serial number.');
const ChangeDatedSerialPayload = payload('changeDatedSerial', 'It as it is now.');
const DatedSerialConnection = connectionOf(
  'DatedSerial',
  () => DatedSerial,
  'dated serial numbers',
);

@Resolver(() => Model)
export class DatedSerialResolver {
  @FieldResolver(() => DatedSerialConnection, {
    description: 'Serial numbers of known date, by which others of the model are dated.',
  })
  datedSerials(@Root() model: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(model, info);
  }

  @Mutation(() => RecordDatedSerialPayload, {
    description: 'Writes down a serial number whose date of making is known.',
  })
  recordDatedSerial(
    @Arg('input', () => RecordDatedSerialInput, { description: 'The serial number.' })
    input: RecordDatedSerialInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asSerial, (work) => recordDatedSerial(work, input));
  }

  @Mutation(() => ChangeDatedSerialPayload, {
    description: 'Corrects a dated serial number, or says that it counts no more.',
  })
  changeDatedSerial(
    @Arg('input', () => ChangeDatedSerialInput, { description: 'The change.' })
    input: ChangeDatedSerialInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asSerial, (work) => changeDatedSerial(work, input));
  }
}
