import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { changeEvidence } from './changeEvidence.js';
import { Claim } from './claim.type.js';
import { ChangeEvidenceInput, RecordEvidenceInput } from './evidence.inputs.js';
import { Confidence, Evidence } from './evidence.type.js';
import { ProvenanceEvent } from './provenanceEvent.type.js';
import { recordEvidence } from './recordEvidence.js';

const asEvidence = { field: 'evidence', typeName: 'Evidence' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'evidence', () => Evidence, description);
const RecordEvidencePayload = payload('recordEvidence', 'The new piece of evidence.');
const ChangeEvidencePayload = payload('changeEvidence', 'The evidence as it is now.');

@Resolver(() => ProvenanceEvent)
export class EvidenceOfEventResolver {
  @FieldResolver(() => [Evidence], {
    description: 'What bears on it, piece by piece, withdrawn pieces included.',
  })
  evidenceFor(@Root() event: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(event, info);
  }

  @FieldResolver(() => Confidence, { description: 'How far it can be relied on, computed.' })
  confidence(@Root() event: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(event, info);
  }
}

@Resolver(() => Claim)
export class EvidenceOfClaimResolver {
  @FieldResolver(() => [Evidence], {
    description: 'What bears on it, piece by piece, withdrawn pieces included.',
  })
  evidenceFor(@Root() claim: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(claim, info);
  }

  @FieldResolver(() => Confidence, { description: 'How far it can be relied on, computed.' })
  confidence(@Root() claim: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(claim, info);
  }

  @Mutation(() => RecordEvidencePayload, {
    description: 'Writes down a piece of evidence that bears on an event or a claim.',
  })
  recordEvidence(
    @Arg('input', () => RecordEvidenceInput, { description: 'The evidence.' })
    input: RecordEvidenceInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asEvidence, (work) => recordEvidence(work, input));
  }

  @Mutation(() => ChangeEvidencePayload, {
    description: 'Corrects a piece of evidence, or says why it counts no more.',
  })
  changeEvidence(
    @Arg('input', () => ChangeEvidenceInput, { description: 'The change.' })
    input: ChangeEvidenceInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asEvidence, (work) => changeEvidence(work, input));
  }
}
