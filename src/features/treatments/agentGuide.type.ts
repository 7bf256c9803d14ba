import { Field, ObjectType } from 'type-graphql';
import { AgentKind } from './agentKind.js';

@ObjectType('AgentGuide', {
  description:
    'What to know of one kind of agent. A reminder, not a licence: the label and its data sheet come first.',
  simpleResolvers: true,
})
export class AgentGuideType {
  @Field(() => AgentKind, { description: 'The kind.' })
  kind!: AgentKind;

  @Field(() => [String], { description: 'The usual cautions, the gravest first.' })
  cautions!: string[];

  @Field(() => [String], { description: 'What protects those who use it; empty if nothing usual.' })
  protection!: string[];

  @Field(() => String, {
    description: 'Where it comes from; "common practice, no source" or "from memory" where so.',
  })
  source!: string;
}

@ObjectType('ForbiddenPair', {
  description: 'Two kinds of agent that must not meet.',
  simpleResolvers: true,
})
export class ForbiddenPairType {
  @Field(() => [AgentKind], { description: 'The two kinds.' })
  agents!: AgentKind[];

  @Field(() => String, { description: 'What happens when they meet.' })
  why!: string;

  @Field(() => String, { description: 'Where that comes from.' })
  source!: string;
}

@ObjectType('AgentCatalogue', {
  description: 'Kinds of agent with their cautions, and the pairs that must not meet.',
  simpleResolvers: true,
})
export class AgentCatalogueType {
  @Field(() => [AgentGuideType], { description: 'Every kind of agent.' })
  agents!: AgentGuideType[];

  @Field(() => [ForbiddenPairType], {
    description: 'Pairs that must not meet, in one treatment or without a rinse between two.',
  })
  forbiddenPairs!: ForbiddenPairType[];
}
