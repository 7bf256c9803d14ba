import { GraphQLDateTimeISO } from 'graphql-scalars';
import { ArgsType, Field, ID, InputType } from 'type-graphql';
import { PageArgs } from '../../api/kit/pageArgs.js';

@InputType({ description: 'Which sessions; all that is given must hold.' })
export class WorkSessionFilter {
  @Field(() => ID, { nullable: true, description: 'Only of this person.' })
  personId?: string | null;

  @Field(() => ID, { nullable: true, description: 'Only on this rig or accessory.' })
  itemId?: string | null;

  @Field(() => ID, { nullable: true, description: 'Only on this task.' })
  taskId?: string | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'Begun at this time or later.' })
  from?: Date | null;

  @Field(() => GraphQLDateTimeISO, { nullable: true, description: 'Begun before this time.' })
  to?: Date | null;
}

@ArgsType()
export class WorkSessionArgs extends PageArgs {
  @Field(() => WorkSessionFilter, { nullable: true, description: 'Which sessions.' })
  filter?: WorkSessionFilter | null;
}
