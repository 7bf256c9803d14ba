import { GraphQLCurrency } from 'graphql-scalars';
import { Field, InputType } from 'type-graphql';
import type { WrittenOrder as Order } from '../../domain/dates/writtenDate.js';
import { AccessoryRole } from '../items/accessoryRole.js';
import { ItemKind } from '../items/itemKind.js';
import { ListDelimiter } from './listDelimiter.js';
import { ListField } from './listField.js';
import { WrittenOrder } from './writtenOrder.js';

@InputType({ description: 'What one column of a list is to be taken for.' })
export class ListColumnInput {
  @Field(() => String, { description: 'The heading of the column.' })
  column!: string;

  @Field(() => ListField, { description: 'The field.' })
  field!: ListField;
}

@InputType({ description: 'An existing list of things that the collector has.' })
export class ImportListInput {
  @Field(() => ItemKind, { description: 'What the things in the list are.' })
  kind!: ItemKind;

  @Field(() => String, {
    description:
      'The list as CSV (RFC 4180) with a row of headings; up to 1,000,000 characters. Longer ones are brought in with `reglow import`.',
  })
  csv!: string;

  @Field(() => Boolean, { description: 'Check everything and change nothing.' })
  isDryRun!: boolean;

  @Field(() => ListDelimiter, {
    nullable: true,
    description: 'What stands between the cells; found out from the headings when left out.',
  })
  delimiter?: ListDelimiter | null;

  @Field(() => WrittenOrder, {
    nullable: true,
    description: 'How 03/04/1971 is meant; such dates are problems when left out.',
  })
  dateOrder?: Order | null;

  @Field(() => GraphQLCurrency, {
    nullable: true,
    description:
      "ISO 4217; for prices without a currency in their row. The collection's own when left out.",
  })
  currency?: string | null;

  @Field(() => AccessoryRole, {
    nullable: true,
    description: 'For accessories without a role in their row.',
  })
  role?: AccessoryRole | null;

  @Field(() => Boolean, {
    nullable: true,
    description:
      'A purchase dated by its year or month alone counts as of the first day of it, and its note says so; a problem when left out.',
  })
  takesFirstDay?: boolean | null;

  @Field(() => [ListColumnInput], {
    nullable: true,
    description: 'Columns whose headings do not say what they are.',
  })
  mapping?: ListColumnInput[] | null;

  @Field(() => [String], { nullable: true, description: 'Headings of columns to be left out.' })
  ignore?: string[] | null;
}
