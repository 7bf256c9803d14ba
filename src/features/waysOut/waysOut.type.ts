import { Field, ObjectType } from 'type-graphql';
import { TokenAllowance } from '../readTokens/tokenAllowance.js';
import { TokenScope } from '../readTokens/tokenScope.js';
import { WayOutExampleKind } from './exampleKind.js';

@ObjectType({ description: 'A command that can be pasted into a shell.', simpleResolvers: true })
export class WayOutExample {
  @Field(() => WayOutExampleKind, { description: 'What it shows.' })
  kind!: WayOutExampleKind;

  @Field(() => String, {
    description: 'The command; the token is in the variable REGLOW_TOKEN of the shell.',
  })
  command!: string;

  @Field(() => String, {
    nullable: true,
    description:
      'For readers that can send no headers: what they subscribe to, with the token in place of $REGLOW_TOKEN. Proxies and programs write addresses down, and the token with them. Null for the rest.',
  })
  subscribeTo!: string | null;
}

@ObjectType({
  description: 'A ready-made way in which other programs read from the collection.',
  simpleResolvers: true,
})
export class WayOut {
  @Field(() => TokenScope, { description: 'What a token must open for it.' })
  scope!: TokenScope;

  @Field(() => String, { description: 'Where it begins on this server.' })
  path!: string;

  @Field(() => String, { description: 'The open standard that it follows.' })
  standard!: string;

  @Field(() => String, { description: 'The media type of its answers.' })
  mediaType!: string;

  @Field(() => [WayOutExample], { description: 'How it is asked.' })
  examples!: readonly WayOutExample[];
}

@ObjectType({
  description: 'A GraphQL document that other programs run by name or digest, as it stands.',
  simpleResolvers: true,
})
export class PublishedDocument {
  @Field(() => String, { description: 'Its name, which it can be run by.' })
  name!: string;

  @Field(() => String, {
    description: '`sha256:` and the digest of its text, which it can be run by.',
  })
  documentId!: string;

  @Field(() => String, { description: 'What it is for.' })
  description!: string;

  @Field(() => String, { description: 'The document.' })
  text!: string;

  @Field(() => [TokenAllowance], { description: 'What a token must show to run it.' })
  needs!: readonly TokenAllowance[];
}

@ObjectType({ description: 'How other programs read from the collection.', simpleResolvers: true })
export class WaysOut {
  @Field(() => [WayOut], { description: 'The ways out, with examples.' })
  ways!: readonly WayOut[];

  @Field(() => [PublishedDocument], { description: 'The published documents, by name.' })
  documents!: readonly PublishedDocument[];
}
