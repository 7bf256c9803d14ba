import { GraphQLDateTimeISO, GraphQLLocalDate } from 'graphql-scalars';
import { Field, Int, ObjectType } from 'type-graphql';
import { connectionOf } from '../../api/kit/connectionOf.js';
import { Node } from '../../api/kit/node.type.js';
import { ProjectStatus } from './projectStatus.js';
import { TargetStandard } from './targetStandard.js';

@ObjectType({
  implements: Node,
  description: 'A restoration of one item: a target standard, ceilings of money and hours, tasks.',
  simpleResolvers: true,
})
export class Project extends Node {
  @Field(() => Int, { description: 'Counts changes; send it back with your change.' })
  version!: number;

  @Field(() => String, { description: 'What the project is called.' })
  title!: string;

  @Field(() => TargetStandard, { description: 'How far it is meant to go.' })
  targetStandard!: TargetStandard;

  @Field(() => ProjectStatus, { description: 'Where it stands, as the person has set it.' })
  status!: ProjectStatus;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day on which work began; null if it has not, or is not recorded.',
  })
  startedOn!: string | null;

  @Field(() => GraphQLDateTimeISO, {
    nullable: true,
    description: 'When it was completed or abandoned; null while it is open.',
  })
  closedAt!: string | null;

  @Field(() => String, {
    nullable: true,
    description: 'What was decided about the item, and why; null if nothing is decided.',
  })
  decision!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was first written down.' })
  recordedAt!: string;

  @Field(() => GraphQLDateTimeISO, { description: 'When its own data last changed.' })
  changedAt!: string;
}

export const ProjectConnection = connectionOf('Project', () => Project, 'projects');
