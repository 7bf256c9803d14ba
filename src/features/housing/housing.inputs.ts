import { Field, ID, InputType } from 'type-graphql';

@InputType({ description: 'An accessory goes into the housing of another, and to its place.' })
export class HouseAccessoryInput {
  @Field(() => ID, { description: 'The accessory that goes in.' })
  accessoryId!: string;

  @Field(() => ID, { description: 'The accessory whose housing takes it.' })
  housingId!: string;
}

@InputType({ description: 'An accessory comes out of its housing; it stays at the same place.' })
export class TakeOutOfHousingInput {
  @Field(() => ID, { description: 'The accessory that comes out.' })
  accessoryId!: string;
}
