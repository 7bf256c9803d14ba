import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { rootPage } from '../../api/kit/rootPage.js';
import { Finding } from '../findings/finding.type.js';
import { Item } from '../items/item.type.js';
import { Component } from '../parts/component.type.js';
import { Party } from '../parties/party.type.js';
import { Task } from '../tasks/task.type.js';
import { changeTreatment } from './changeTreatment.js';
import { recordTreatment } from './recordTreatment.js';
import { ChangeTreatmentInput, RecordTreatmentInput, TreatmentFilter } from './treatment.inputs.js';
import { treatmentReads } from './treatment.reads.js';
import { AgentMeeting, Treatment, TreatmentAgent, TreatmentConnection } from './treatment.type.js';
import { treatmentConditions } from './treatmentConditions.js';

const asTreatment = { field: 'treatment', typeName: 'Treatment' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'treatment', () => Treatment, description);
const RecordTreatmentPayload = payload('recordTreatment', 'The treatment, with its cautions.');
const ChangeTreatmentPayload = payload('changeTreatment', 'The treatment as it is now.');

@Resolver(() => Treatment)
export class TreatmentResolver {
  @Query(() => TreatmentConnection, { description: 'Treatments of the collection, latest first.' })
  treatments(
    @Arg('filter', () => TreatmentFilter, {
      nullable: true,
      description: 'Which; all if left out.',
    })
    filter: TreatmentFilter | null | undefined,
    @Args() args: PageArgs,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    const { table, columns, typeName } = treatmentReads;
    const withAgent = `EXISTS (SELECT 1 FROM treatment_agent
      WHERE treatment_agent.treatment_id = treatment.id AND treatment_agent.kind = ?)`;
    return rootPage(context, info, args, {
      typeName,
      from: table,
      table,
      columns,
      sortBy: 'treatment.treated_at',
      direction: 'DESC',
      where: [
        ...treatmentConditions(filter),
        ...(filter?.agent ? [{ sql: withAgent, parameters: [filter.agent] }] : []),
      ],
    });
  }

  @FieldResolver(() => Item, { description: 'The rig or accessory.' })
  item(@Root() treatment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(treatment, info);
  }

  @FieldResolver(() => Component, { nullable: true, description: 'The component; null if none.' })
  component(@Root() treatment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(treatment, info);
  }

  @FieldResolver(() => Task, { nullable: true, description: 'The task; null if none.' })
  task(@Root() treatment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(treatment, info);
  }

  @FieldResolver(() => Finding, { nullable: true, description: 'The finding; null if none.' })
  finding(@Root() treatment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(treatment, info);
  }

  @FieldResolver(() => Party, { nullable: true, description: 'Who did it; null if unknown.' })
  treatedBy(@Root() treatment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(treatment, info);
  }

  @FieldResolver(() => Party, {
    nullable: true,
    description: 'Who answers for agents that must not meet; null where none met.',
  })
  overriddenBy(@Root() treatment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(treatment, info);
  }

  @FieldResolver(() => [TreatmentAgent], { description: 'What was used, in order.' })
  agents(@Root() treatment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(treatment, info);
  }

  @FieldResolver(() => [AgentMeeting], {
    description:
      'Agents that must not meet and did: in it, or with what earlier treatments left on the surface. Empty when none.',
  })
  meetings(@Root() treatment: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(treatment, info);
  }

  @Mutation(() => RecordTreatmentPayload, {
    description: 'Writes a treatment down. Agents that must not meet are refused in one.',
  })
  recordTreatment(
    @Arg('input', () => RecordTreatmentInput, { description: 'The treatment.' })
    input: RecordTreatmentInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTreatment, (work) => recordTreatment(work, input));
  }

  @Mutation(() => ChangeTreatmentPayload, { description: 'Corrects a treatment.' })
  changeTreatment(
    @Arg('input', () => ChangeTreatmentInput, { description: 'The correction.' })
    input: ChangeTreatmentInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTreatment, (work) => changeTreatment(work, input));
  }
}
