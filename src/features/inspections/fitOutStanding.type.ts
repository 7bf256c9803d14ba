import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { PositionState } from './positionState.js';

export const PositionGround = describedEnum(
  'PositionGround',
  'What the state of a position rests on: the latest that is recorded.',
  {
    CHECK: 'Somebody looked at it at an inspection.',
    FITTING: 'A component was fitted there.',
    REMOVAL: 'The component that sat there was removed.',
    NOTHING: 'Nothing is recorded of it yet.',
  },
);
export type PositionGround = keyof typeof PositionGround;

@ObjectType({
  description: 'One position of the fit-out, as it stands in one item.',
  simpleResolvers: true,
})
export class FitOutStanding {
  @Field(() => PositionState, { description: 'What is there, as far as recorded.' })
  state!: PositionState;

  @Field(() => PositionGround, { description: 'What that rests on.' })
  restsOn!: PositionGround;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was looked at, fitted or removed; null when nothing is recorded.',
  })
  since!: string | null;
}
