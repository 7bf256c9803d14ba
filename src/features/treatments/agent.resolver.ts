import { GraphQLError, type GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Int, Query, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { dilutionVolumes } from '../../domain/treatments/dilutionVolumes.js';
import { agentCatalogue } from './agentCatalogue.js';
import { AgentCatalogueType, AgentGuideType } from './agentGuide.type.js';
import { DilutionInput, TreatmentFilter } from './treatment.inputs.js';
import { AgentMeeting, DilutionVolumes, Treatment, TreatmentAgent } from './treatment.type.js';
import { TreatmentResult } from './treatmentResult.type.js';
import { readTreatmentResults } from './treatmentResults.reads.js';

const mostResults = 500;

@Resolver(() => TreatmentAgent)
export class TreatmentAgentResolver {
  @Query(() => AgentCatalogueType, { description: 'Cleaning agents, and what must not meet.' })
  cleaningAgents() {
    const { guides, forbiddenPairs } = agentCatalogue;
    return { agents: [...guides.values()], forbiddenPairs };
  }

  @Query(() => DilutionVolumes, { description: 'How much agent and water make an amount.' })
  dilutionVolumes(
    @Arg('dilution', () => DilutionInput, { description: 'Parts by volume.' })
    { agentParts, waterParts }: DilutionInput,
    @Arg('amount', () => DecimalScalar, { description: 'How much is wanted, above zero.' })
    amount: string,
    @Arg('unit', () => String, { defaultValue: 'ml', description: 'Its unit of volume.' })
    unit: string,
  ) {
    return volumesOf(agentParts, waterParts, amount, unit);
  }

  @Query(() => [TreatmentResult], {
    description: 'What worked on which surface, across the collection; what worked most first.',
  })
  treatmentResults(
    @Arg('filter', () => TreatmentFilter, {
      nullable: true,
      description: 'Which; all if left out.',
    })
    filter: TreatmentFilter | null | undefined,
    @Arg('first', () => Int, { defaultValue: 100, description: 'How many, up to 500.' })
    first: number,
    @Ctx() context: ApiContext,
  ) {
    return readTreatmentResults(context, filter, Math.min(Math.max(first, 0), mostResults));
  }

  @FieldResolver(() => AgentGuideType, { description: 'Cautions, protection, source.' })
  guide(@Root() agent: TreatmentAgent) {
    return agentCatalogue.guides.get(agent.kind);
  }

  @FieldResolver(() => DilutionVolumes, { description: 'How much of it makes an amount.' })
  volumes(
    @Root() { agentParts, waterParts }: TreatmentAgent,
    @Arg('amount', () => DecimalScalar, { description: 'How much is wanted, above zero.' })
    amount: string,
    @Arg('unit', () => String, { defaultValue: 'ml', description: 'Its unit of volume.' })
    unit: string,
  ) {
    return volumesOf(agentParts ?? '1', waterParts ?? '0', amount, unit);
  }
}

@Resolver(() => AgentMeeting)
export class AgentMeetingResolver {
  @FieldResolver(() => Treatment, {
    nullable: true,
    description: 'The earlier treatment whose agent may still be there; null: in one treatment.',
  })
  earlier(@Root() meeting: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(meeting, info);
  }
}

function volumesOf(agentParts: string, waterParts: string, amount: string, unit: string) {
  try {
    return { ...dilutionVolumes(agentParts, waterParts, amount), unit };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new GraphQLError(error.message, { extensions: { code: 'BAD_USER_INPUT' } });
  }
}
