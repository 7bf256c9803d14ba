import { Field, ObjectType, type ClassType } from 'type-graphql';
import { Problem } from './problem.type.js';

/** The payload type of one mutation: the thing or null, and problems. */
export function payloadOf(
  mutation: string,
  field: string,
  type: () => ClassType | object,
  description: string,
): ClassType {
  @ObjectType(`${mutation.charAt(0).toUpperCase()}${mutation.slice(1)}Payload`, {
    description: `What came of \`${mutation}\`.`,
    simpleResolvers: true,
  })
  class Payload {
    @Field(() => [Problem], {
      description: 'Why nothing was done; empty when it was. All problems at once.',
    })
    problems!: Problem[];
  }
  Field(type as () => ClassType, { nullable: true, description })(Payload.prototype, field);
  return Payload;
}
