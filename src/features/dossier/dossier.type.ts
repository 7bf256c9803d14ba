import { GraphQLLocalDate } from 'graphql-scalars';
import { ArgsType, Field, Int, ObjectType } from 'type-graphql';
import {
  DossierExtent,
  DossierFormat,
  DossierPaper,
  DossierReader,
  DossierWithheld,
} from './dossierReader.js';

@ArgsType()
export class DossierFormArgs {
  @Field(() => DossierFormat, {
    defaultValue: DossierFormat.HTML,
    description: 'How it is written.',
  })
  format!: DossierFormat;

  @Field(() => DossierPaper, { defaultValue: DossierPaper.A4, description: 'The paper of a PDF.' })
  paper!: DossierPaper;

  @Field(() => GraphQLLocalDate, {
    nullable: true,
    description: 'The day that it states; today in UTC if left out. It changes nothing else.',
  })
  statedOn?: string | null;
}

@ArgsType()
export class DossierArgs extends DossierFormArgs {
  @Field(() => DossierReader, { defaultValue: DossierReader.BUYER, description: 'Who reads it.' })
  reader!: DossierReader;

  @Field(() => DossierExtent, {
    defaultValue: DossierExtent.DOSSIER,
    description: 'How much of it.',
  })
  extent!: DossierExtent;

  @Field(() => [DossierWithheld], {
    nullable: true,
    description: 'What is left out; as is usual for the reader if not said, [] for nothing.',
  })
  withhold?: DossierWithheld[] | null;
}

@ObjectType({
  description: 'A dossier exactly as its reader gets it, for the owner to look at before.',
  simpleResolvers: true,
})
export class DossierFile {
  @Field(() => String, { description: 'What the file is called.' })
  fileName!: string;

  @Field(() => String, { description: 'Its media type: text/html or application/pdf.' })
  mediaType!: string;

  @Field(() => Int, { description: 'Its size in bytes.' })
  byteCount!: number;

  @Field(() => String, { description: 'SHA-256 of its bytes, in hexadecimal.' })
  digest!: string;

  @Field(() => String, { description: 'Its bytes in Base64 (RFC 4648).' })
  contentBase64!: string;

  @Field(() => String, {
    description:
      'Where the server hands out the same bytes as long as the records are the same; add `&show=1` to look at it in a browser.',
  })
  path!: string;

  @Field(() => [DossierWithheld], { description: 'What is left out of it.' })
  withheld!: DossierWithheld[];
}

@ObjectType({
  description: 'For whom a dossier is written, and what that means.',
  simpleResolvers: true,
})
export class DossierReaderGuide {
  @Field(() => DossierReader, { description: 'Who reads it.' })
  reader!: DossierReader;

  @Field(() => [DossierWithheld], {
    description: 'What is left out unless the owner says otherwise.',
  })
  usuallyWithheld!: readonly DossierWithheld[];
}
