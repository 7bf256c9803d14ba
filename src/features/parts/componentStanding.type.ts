import { Field, ObjectType } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';

export const ComponentState = describedEnum(
  'ComponentState',
  'How a component stands by its readings. Of each quantity the latest on a tester and the latest in circuit count.',
  {
    UNTESTED: 'No reading could be held against a limit.',
    PASSED_ON_TESTER: 'The tester found nothing against it. That does not prove it.',
    PROVEN_IN_CIRCUIT: 'Within limits in the set, with nothing against it.',
    SUSPECT:
      'Rejected on a tester, then within limits in circuit; or a trend reaches a limit soon: look again.',
    REJECTED: 'Outside its limits, and nothing later in circuit speaks for it.',
  },
);
export type ComponentState = keyof typeof ComponentState;

export const StandingGround = describedEnum('StandingGround', 'What a state rests on.', {
  NOTHING_JUDGED: 'No reading could be held against a limit.',
  WITHIN_LIMITS: 'Latest readings within limits, with nothing against them.',
  OUTSIDE_LIMITS: 'Latest readings outside their limits.',
  CONTRADICTION: 'The tester is against it; the circuit, later, is for it.',
  TREND: 'A trend that reaches a limit within a year of its last reading.',
});
export type StandingGround = keyof typeof StandingGround;

@ObjectType({
  description: 'How a component stands, and the readings that say so. Computed, never typed in.',
  simpleResolvers: true,
})
export class ComponentStanding {
  @Field(() => ComponentState, { description: 'The answer in a word.' })
  state!: ComponentState;

  @Field(() => StandingGround, { description: 'What the state rests on.' })
  ground!: StandingGround;
}
