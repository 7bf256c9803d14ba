import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { DecimalScalar } from '../../api/kit/scalars.js';
import { Zone } from '../inspections/zone.js';
import { AgentKind } from './agentKind.js';
import { SurfaceMaterial } from './surfaceMaterial.js';
import { TreatmentOutcome } from './treatmentOutcome.js';

@ObjectType({ description: 'How much agent and water make an amount.', simpleResolvers: true })
export class DilutionVolumes {
  @Field(() => DecimalScalar, { description: 'Agent, in `unit`, to a thousandth.' })
  agent!: string;

  @Field(() => DecimalScalar, { description: 'Water, in `unit`: the rest of the amount.' })
  water!: string;

  @Field(() => String, { description: 'The unit of volume that was asked for.' })
  unit!: string;
}

@ObjectType({
  implements: Node,
  description: 'One agent of a treatment, with its dilution.',
  simpleResolvers: true,
})
export class TreatmentAgent extends Node {
  @Field(() => AgentKind, { description: 'Its kind.' })
  kind!: AgentKind;

  @Field(() => String, { nullable: true, description: 'What exactly; null if not recorded.' })
  name!: string | null;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'Parts of agent by volume; null: used as it is.',
  })
  agentParts!: string | null;

  @Field(() => DecimalScalar, {
    nullable: true,
    description: 'Parts of water by volume; null: used as it is.',
  })
  waterParts!: string | null;
}

@ObjectType({
  description:
    'Agents that must not meet and did: used together, or one after the other on one surface without a rinse between.',
  simpleResolvers: true,
})
export class AgentMeeting {
  @Field(() => [AgentKind], { description: 'The two kinds.' })
  agents!: AgentKind[];

  @Field(() => String, { description: 'What happens when they meet.' })
  why!: string;

  @Field(() => String, { description: 'Where that comes from.' })
  source!: string;
}

@ObjectType({
  implements: Node,
  description: 'A cleaning or finishing step on one surface. Photographs are its attachments.',
  simpleResolvers: true,
})
export class Treatment extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => Zone, { nullable: true, description: 'The part of the item; null if not said.' })
  zone!: Zone | null;

  @Field(() => String, { description: 'The surface in words.' })
  surface!: string;

  @Field(() => SurfaceMaterial, { description: 'What it is of.' })
  material!: SurfaceMaterial;

  @Field(() => Int, { nullable: true, description: 'Left on for, minutes; null if not recorded.' })
  dwellMinutes!: number | null;

  @Field(() => Int, { description: 'How often it was done.' })
  passes!: number;

  @Field(() => Boolean, { description: 'It was rinsed off at the end.' })
  isRinsed!: boolean;

  @Field(() => TreatmentOutcome, { description: 'How it came out.' })
  outcome!: TreatmentOutcome;

  @Field(() => String, { nullable: true, description: 'What was seen; null if not recorded.' })
  result!: string | null;

  @Field(() => String, { nullable: true, description: 'What remains; null if nothing is said.' })
  remains!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was done.' })
  treatedAt!: string;

  @Field(() => String, {
    nullable: true,
    description: 'Why agents that must not meet were used together; null where none were.',
  })
  overrideReason!: string | null;
}

export const TreatmentConnection = connectionOf('Treatment', () => Treatment, 'treatments');
