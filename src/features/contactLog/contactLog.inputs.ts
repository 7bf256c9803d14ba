import { Field, ID, InputType, Int } from 'type-graphql';

@InputType({ description: 'Which rig a log means.' })
export class LogRigInput {
  @Field(() => String, { description: 'What stands in MY_RIG, in whatever capitals.' })
  text!: string;

  @Field(() => ID, { description: 'The rig.' })
  rigId!: string;
}

@InputType({ description: 'A log of contacts that the operator keeps elsewhere.' })
export class ImportContactLogInput {
  @Field(() => String, {
    description:
      'The log in the ADI form of ADIF (adif.org.uk); up to 1,000,000 characters. Longer ones are brought in with `reglow import-log`.',
  })
  adi!: string;

  @Field(() => Boolean, { description: 'Check and count everything, and change nothing.' })
  isDryRun!: boolean;

  @Field(() => ID, {
    nullable: true,
    description: 'The rig of contacts without MY_RIG; such contacts are problems when left out.',
  })
  rigId?: string | null;

  @Field(() => [LogRigInput], {
    defaultValue: [],
    description:
      'Which rig is meant where MY_RIG is not its inventory number, its name or its model alone.',
  })
  rigs!: LogRigInput[];

  @Field(() => [String], {
    defaultValue: [],
    description: 'Texts in MY_RIG whose contacts are left out: rigs that are not kept here.',
  })
  ignore!: string[];

  @Field(() => Int, {
    defaultValue: 60,
    description: 'Minutes, 1 to 1440: where nothing was logged for longer, a new use begins.',
  })
  gapMinutes!: number;
}
