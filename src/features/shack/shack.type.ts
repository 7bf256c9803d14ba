import { Field, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { AccessoryRole } from '../items/accessoryRole.js';
import { ReadinessLevel } from '../standing/readiness.type.js';

@ObjectType({ description: 'An accessory that fills a role of a rig.', simpleResolvers: true })
export class RoleFilled {
  @Field(() => AccessoryRole, { description: 'What it does for the rig.' })
  role!: AccessoryRole;
}

@ObjectType({
  description: 'A rig of a set that can be on the air at once.',
  simpleResolvers: true,
})
export class ServedRig {
  @Field(() => [String], { description: 'What to know before using it; empty if nothing.' })
  cautions!: string[];
}

@ObjectType({ description: 'A rig that is not in the set, and why.', simpleResolvers: true })
export class LeftOutRig {
  @Field(() => ReadinessLevel, { description: 'How far it is from the air, looked at alone.' })
  level!: ReadinessLevel;

  @Field(() => [String], { description: 'Why it is left out, a sentence each.' })
  reasons!: string[];
}

@ObjectType({
  description:
    'The most rigs that can be on the air at once: an accessory serves one rig at a time, and what is housed together moves together.',
  simpleResolvers: true,
})
export class Shack {
  @Field(() => Int, { description: 'Rigs that are ready, each looked at alone.' })
  readyAlone!: number;

  @Field(() => Int, { description: 'Rigs of the set below: ready at once.' })
  readyAtOnce!: number;

  @Field(() => Int, { description: 'No set is larger than this; the same number when proven.' })
  atMost!: number;

  @Field(() => Boolean, {
    description: 'No larger set exists; false when the search was cut short at its limit.',
  })
  isProven!: boolean;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
