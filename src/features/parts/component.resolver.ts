import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Args, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { PageArgs } from '../../api/kit/pageArgs.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { Reading, ReadingConnection } from '../readings/reading.type.js';
import { changeComponent } from './changeComponent.js';
import { ChangeComponentInput } from './component.inputs.js';
import { Component } from './component.type.js';
import { ComponentStanding } from './componentStanding.type.js';
import { Fitting } from './fitting.type.js';
import { PartType } from './partType.type.js';

const asComponent = { field: 'component', typeName: 'Component' };
const ChangeComponentPayload = payloadOf(
  'changeComponent',
  'component',
  () => Component,
  'The component as it is now.',
);

@Resolver(() => Component)
export class ComponentResolver {
  @FieldResolver(() => PartType, {
    nullable: true,
    description: 'The kind of part, whose limits its readings are held against; null if unknown.',
  })
  partType(@Root() component: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(component, info);
  }

  @FieldResolver(() => [Fitting], { description: 'Where it has been, the first place first.' })
  fittings(@Root() component: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(component, info);
  }

  @FieldResolver(() => ComponentStanding, {
    description: 'How it stands by all its readings so far, and which of them say so.',
  })
  state(@Root() component: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(component, info);
  }

  @FieldResolver(() => ReadingConnection, { description: 'Readings on it, the latest first.' })
  readings(@Root() component: object, @Args() _args: PageArgs, @Info() info: GraphQLResolveInfo) {
    return loadedField(component, info);
  }

  @Mutation(() => ChangeComponentPayload, { description: 'Corrects what a component is.' })
  changeComponent(
    @Arg('input', () => ChangeComponentInput, { description: 'The correction.' })
    input: ChangeComponentInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asComponent, (work) => changeComponent(work, input));
  }
}

@Resolver(() => ComponentStanding)
export class ComponentStandingResolver {
  @FieldResolver(() => [Reading], {
    description: 'The readings that say so: those against it, those for it, or both.',
  })
  readings(@Root() standing: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(standing, info);
  }
}
