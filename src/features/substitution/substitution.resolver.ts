import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, ID, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { PartType } from '../parts/partType.type.js';
import { changeSubstitution } from './changeSubstitution.js';
import { recordSubstitution } from './recordSubstitution.js';
import { ChangeSubstitutionInput, RecordSubstitutionInput } from './substitution.inputs.js';
import { Substitute, Substitution } from './substitution.type.js';
import { HeaterSupply } from './substitutionGrade.js';

const asSubstitution = { field: 'substitution', typeName: 'Substitution' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'substitution', () => Substitution, description);
const RecordSubstitutionPayload = payload('recordSubstitution', 'The new substitution.');
const ChangeSubstitutionPayload = payload('changeSubstitution', 'The substitution as it is now.');
const howHeated = { defaultValue: 'PARALLEL' as const, description: 'How the heaters are fed.' };

@Resolver(() => Substitution)
export class SubstitutionResolver {
  @FieldResolver(() => PartType, { description: 'The part type that is wanted.' })
  original(@Root() substitution: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(substitution, info);
  }

  @FieldResolver(() => PartType, { description: 'The part type that stands in for it.' })
  substitute(@Root() substitution: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(substitution, info);
  }

  @Mutation(() => RecordSubstitutionPayload, {
    description: 'Writes down that one part type may stand in for another. No circles.',
  })
  recordSubstitution(
    @Arg('input', () => RecordSubstitutionInput, { description: 'The substitution.' })
    input: RecordSubstitutionInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asSubstitution, (work) => recordSubstitution(work, input));
  }

  @Mutation(() => ChangeSubstitutionPayload, { description: 'Changes a substitution.' })
  changeSubstitution(
    @Arg('input', () => ChangeSubstitutionInput, { description: 'The change.' })
    input: ChangeSubstitutionInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asSubstitution, (work) => changeSubstitution(work, input));
  }
}

@Resolver(() => Substitute)
export class SubstituteResolver {
  @FieldResolver(() => PartType, { description: 'The part type that would stand in.' })
  partType(@Root() substitute: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(substitute, info);
  }

  @FieldResolver(() => Substitution, {
    nullable: true,
    description: 'What a person wrote down about it; null when it was computed.',
  })
  recorded(@Root() substitute: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(substitute, info);
  }
}

@Resolver(() => PartType)
export class SubstitutesOfPartTypeResolver {
  @FieldResolver(() => [Substitute], {
    description:
      'What stands in for it, the best first: in stock, then by grade, then by the price last noted; at most 50.',
  })
  substitutes(
    @Root() partType: object,
    @Info() info: GraphQLResolveInfo,
    @Arg('heaters', () => HeaterSupply, howHeated) _heaters: HeaterSupply,
  ) {
    return loadedField(partType, info);
  }

  @FieldResolver(() => Substitute, {
    nullable: true,
    description:
      'Whether one part type stands in for it, and why not; null when there is no such part type.',
  })
  substituteBy(
    @Root() partType: object,
    @Info() info: GraphQLResolveInfo,
    @Arg('candidateId', () => ID, { description: 'The part type that would stand in.' })
    _candidateId: string,
    @Arg('heaters', () => HeaterSupply, howHeated) _heaters: HeaterSupply,
  ) {
    return loadedField(partType, info);
  }
}
