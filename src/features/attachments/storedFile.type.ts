import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Node } from '../../api/kit/node.type.js';

@ObjectType({
  implements: Node,
  description: 'A file kept byte for byte, once, whatever it is attached to.',
  simpleResolvers: true,
})
export class StoredFile extends Node {
  @Field(() => String, { description: 'SHA-256 of its bytes, 64 hexadecimal digits.' })
  digest!: string;

  @Field(() => Float, { description: 'Length in bytes.' })
  byteLength!: number;

  @Field(() => String, { description: 'Media type by its bytes, whatever the sender said.' })
  mediaType!: string;

  @Field(() => String, { description: 'What the file was called when it came.' })
  originalName!: string;

  @Field(() => Int, {
    nullable: true,
    description: 'Width seen upright, in pixels; null for what is no picture.',
  })
  widthPixels!: number | null;

  @Field(() => Int, {
    nullable: true,
    description: 'Height seen upright, in pixels; null for what is no picture.',
  })
  heightPixels!: number | null;

  @Field(() => String, {
    nullable: true,
    description:
      "When the picture was taken by the camera's clock: ISO 8601, with an offset where the camera wrote one; null if it wrote nothing.",
  })
  takenAt!: string | null;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was first kept.' })
  keptAt!: string;
}
