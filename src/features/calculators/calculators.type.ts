import { ObjectType } from 'type-graphql';

@ObjectType({
  description:
    'Sums for the bench, on published rules; they read nothing of the collection. Bad input is refused with every reason.',
})
export class Calculators {}
