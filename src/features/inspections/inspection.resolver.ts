import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Finding } from '../findings/finding.type.js';
import { Item } from '../items/item.type.js';
import { Party } from '../parties/party.type.js';
import { changeInspection } from './changeInspection.js';
import { FitOutCheck } from './fitOutCheck.type.js';
import { ChangeInspectionInput, RecordInspectionInput } from './inspection.inputs.js';
import { Inspection } from './inspection.type.js';
import { recordInspection } from './recordInspection.js';

const asInspection = { field: 'inspection', typeName: 'Inspection' };
const inspectionPayload = (mutation: string, description: string) =>
  payloadOf(mutation, 'inspection', () => Inspection, description);
const RecordInspectionPayload = inspectionPayload('recordInspection', 'The inspection as kept.');
const ChangeInspectionPayload = inspectionPayload('changeInspection', 'The inspection as it is.');

@Resolver(() => Inspection)
export class InspectionResolver {
  @FieldResolver(() => Item, { description: 'The rig or accessory that was looked over.' })
  item(@Root() inspection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(inspection, info);
  }

  @FieldResolver(() => Party, { nullable: true, description: 'Who looked; null if not recorded.' })
  inspector(@Root() inspection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(inspection, info);
  }

  @FieldResolver(() => [Finding], { description: 'What was seen, in the order recorded.' })
  findings(@Root() inspection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(inspection, info);
  }

  @FieldResolver(() => [FitOutCheck], { description: 'The positions that were checked off.' })
  fitOutChecks(@Root() inspection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(inspection, info);
  }

  @Mutation(() => RecordInspectionPayload, {
    description: 'Writes down a look over an item: findings, hazards and fit-out in one go.',
  })
  recordInspection(
    @Arg('input', () => RecordInspectionInput, { description: 'What was seen.' })
    input: RecordInspectionInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asInspection, (work) => recordInspection(work, input));
  }

  @Mutation(() => ChangeInspectionPayload, { description: 'Corrects an inspection.' })
  changeInspection(
    @Arg('input', () => ChangeInspectionInput, { description: 'The correction.' })
    input: ChangeInspectionInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asInspection, (work) => changeInspection(work, input));
  }
}
