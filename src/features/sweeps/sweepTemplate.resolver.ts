import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Model } from '../models/model.type.js';
import { changeSweepTemplate } from './changeSweepTemplate.js';
import { saveSweepTemplate } from './saveSweepTemplate.js';
import type { SweepColumn } from './sweepColumn.js';
import { ChangeSweepTemplateInput, SaveSweepTemplateInput } from './sweepTemplate.inputs.js';
import { SweepQuantity, SweepTemplate } from './sweepTemplate.type.js';

const asTemplate = { field: 'sweepTemplate', typeName: 'SweepTemplate' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'sweepTemplate', () => SweepTemplate, description);
const SaveSweepTemplatePayload = payload('saveSweepTemplate', 'The sweep template.');
const ChangeSweepTemplatePayload = payload('changeSweepTemplate', 'It as it is now.');

@Resolver(() => SweepTemplate)
export class SweepTemplateResolver {
  @FieldResolver(() => Model, { description: 'The model whose sets it is for.' })
  model(@Root() template: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(template, info);
  }

  @FieldResolver(() => [String], { description: 'The positions, in the order of reading.' })
  designators(@Root() template: object): string[] {
    return JSON.parse((template as { designators: string }).designators) as string[];
  }

  @FieldResolver(() => [SweepQuantity], { description: 'The columns, in order.' })
  quantities(@Root() template: object): SweepColumn[] {
    return JSON.parse((template as { quantities: string }).quantities) as SweepColumn[];
  }

  @Mutation(() => SaveSweepTemplatePayload, {
    description:
      'Keeps what is read in which positions of a model, and how, under a name, for sweeps to come.',
  })
  saveSweepTemplate(
    @Arg('input', () => SaveSweepTemplateInput, { description: 'The template.' })
    input: SaveSweepTemplateInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTemplate, (work) => saveSweepTemplate(work, input));
  }

  @Mutation(() => ChangeSweepTemplatePayload, {
    description: 'Changes a sweep template, or offers it no more. Sweeps taken with it stay.',
  })
  changeSweepTemplate(
    @Arg('input', () => ChangeSweepTemplateInput, { description: 'The change.' })
    input: ChangeSweepTemplateInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asTemplate, (work) => changeSweepTemplate(work, input));
  }
}

@Resolver(() => Model)
export class SweepTemplatesOfModelResolver {
  @FieldResolver(() => [SweepTemplate], {
    description: 'What is read of such a set in one go, by name, without the retired ones.',
  })
  sweepTemplates(@Root() model: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(model, info);
  }
}
