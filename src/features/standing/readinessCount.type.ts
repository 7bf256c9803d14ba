import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { ReadinessLevel } from './readiness.type.js';

@ObjectType({ description: 'How many rigs stand at one level.', simpleResolvers: true })
export class RigsAtLevel {
  @Field(() => ReadinessLevel, { description: 'The level.' })
  level!: ReadinessLevel;

  @Field(() => Int, { description: 'How many rigs.' })
  rigs!: number;
}

@ObjectType({
  description: 'How many rigs of the collection stand where, each judged by itself.',
  simpleResolvers: true,
})
export class ReadinessCount {
  @Field(() => [RigsAtLevel], { description: 'Every level, the nearest to the air first.' })
  byLevel!: RigsAtLevel[];

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
