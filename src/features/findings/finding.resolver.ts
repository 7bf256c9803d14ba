import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Hazard } from '../hazards/hazard.type.js';
import { Inspection } from '../inspections/inspection.type.js';
import { Item } from '../items/item.type.js';
import { changeFinding } from './changeFinding.js';
import { ChangeFindingInput, RecordFindingInput, SettleFindingInput } from './finding.inputs.js';
import { Finding } from './finding.type.js';
import { recordFinding } from './recordFinding.js';
import { settleFinding } from './settleFinding.js';

const asFinding = { field: 'finding', typeName: 'Finding' };
const findingPayload = (mutation: string, description: string) =>
  payloadOf(mutation, 'finding', () => Finding, description);
const RecordFindingPayload = findingPayload('recordFinding', 'The finding, with its hazards.');
const SettleFindingPayload = findingPayload('settleFinding', 'The finding as it is now.');
const ChangeFindingPayload = findingPayload('changeFinding', 'The finding as it is now.');

@Resolver(() => Finding)
export class FindingResolver {
  @FieldResolver(() => Item, { description: 'The rig or accessory that it was seen on.' })
  item(@Root() finding: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(finding, info);
  }

  @FieldResolver(() => Inspection, {
    nullable: true,
    description: 'The inspection at which it was seen; null if seen at the bench.',
  })
  inspection(@Root() finding: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(finding, info);
  }

  @FieldResolver(() => [Hazard], { description: 'What about it can hurt; those standing first.' })
  hazards(@Root() finding: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(finding, info);
  }

  @Mutation(() => RecordFindingPayload, { description: 'Writes down something seen at the bench.' })
  recordFinding(
    @Arg('input', () => RecordFindingInput, { description: 'The finding.' })
    input: RecordFindingInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asFinding, (work) => recordFinding(work, input));
  }

  @Mutation(() => SettleFindingPayload, {
    description: 'Accepts or resolves a finding, or opens it again. Hazards need `clearHazard`.',
  })
  settleFinding(
    @Arg('input', () => SettleFindingInput, { description: 'What becomes of it.' })
    input: SettleFindingInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asFinding, (work) => settleFinding(work, input));
  }

  @Mutation(() => ChangeFindingPayload, { description: 'Corrects a finding.' })
  changeFinding(
    @Arg('input', () => ChangeFindingInput, { description: 'The correction.' })
    input: ChangeFindingInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asFinding, (work) => changeFinding(work, input));
  }
}
