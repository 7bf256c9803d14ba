import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { AgentKind } from './agentKind.js';
import { SurfaceMaterial } from './surfaceMaterial.js';

@ObjectType({
  description: 'How one kind of agent came out on one kind of surface, in the whole collection.',
  simpleResolvers: true,
})
export class TreatmentResult {
  @Field(() => String, { description: 'The surface, as it was last called.' })
  surface!: string;

  @Field(() => SurfaceMaterial, { description: 'What it is of.' })
  material!: SurfaceMaterial;

  @Field(() => AgentKind, { description: 'The kind of agent, alone or with others.' })
  agent!: AgentKind;

  @Field(() => Int, { description: 'Treatments in all.' })
  treatmentCount!: number;

  @Field(() => Int, { description: 'Those that worked.' })
  workedCount!: number;

  @Field(() => Int, { description: 'Those that worked in part.' })
  workedInPartCount!: number;

  @Field(() => Int, { description: 'Those without effect.' })
  noEffectCount!: number;

  @Field(() => Int, { description: 'Those that did damage.' })
  harmedCount!: number;

  @Field(() => Int, { description: 'Those of which it cannot be said yet.' })
  undecidedCount!: number;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was last used so.' })
  lastTreatedAt!: string;

  @Field(() => [String], { description: 'The usual cautions on this kind of agent.' })
  cautions!: string[];

  @Field(() => Basis, { description: 'What was counted.' })
  basis!: Basis;
}
