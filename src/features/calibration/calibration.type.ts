import { GraphQLDateTimeISO } from 'graphql-scalars';
import { Field, Float, Int, ObjectType } from 'type-graphql';
import { Basis } from '../../api/kit/basis.type.js';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { TaskKind } from '../tasks/taskKind.js';

@ObjectType({
  description: 'What finished tasks of one kind say of the estimates of such tasks.',
  simpleResolvers: true,
})
export class KindCalibration {
  @Field(() => TaskKind, { description: 'The kind of work.' })
  kind!: TaskKind;

  @Field(() => Int, { description: 'Finished tasks with hours that it rests on.' })
  tasks!: number;

  @Field(() => Float, {
    description:
      'Geometric mean of actual hours over what the estimate typically gives; above 1: it takes longer.',
  })
  rawRatio!: number;

  @Field(() => Float, {
    description: 'How much that counts, 0 to 1; the rest is the ratio of the whole collection.',
  })
  weight!: number;

  @Field(() => Float, { description: 'What estimates of this kind are multiplied by.' })
  multiplier!: number;
}

@ObjectType({
  description: 'A finished task: what it was thought to take, and what it took.',
  simpleResolvers: true,
})
export class EstimateEvidence {
  @Field(() => TaskKind, { description: 'The kind of work.' })
  kind!: TaskKind;

  @Field(() => Float, {
    description: 'Mean of the estimate as it stood when work began, (a + 4m + b) / 6, in hours.',
  })
  estimatedHours!: number;

  @Field(() => Float, { description: 'Hours recorded on it, each minute counted once.' })
  actualHours!: number;

  @Field(() => Float, {
    description: 'Actual hours over what the estimate typically gives (its geometric mean).',
  })
  ratio!: number;

  @Field(() => GraphQLDateTimeISO, { description: 'When it was finished.' })
  finishedAt!: string;
}

export const BackTestVerdict = describedEnum(
  'BackTestVerdict',
  'How the share of tasks that stayed within their p80 compares with 80 %.',
  {
    TOO_FEW: 'Fewer than ten finished tasks: nothing can be said.',
    TOO_OPTIMISTIC: 'Fewer stayed within than was said, by more than two standard errors.',
    AS_STATED: 'As many stayed within as was said, within two standard errors.',
    TOO_CAUTIOUS: 'More stayed within than was said, by more than two standard errors.',
  },
);

@ObjectType({ description: 'A point of the calibration curve.', simpleResolvers: true })
export class CalibrationPoint {
  @Field(() => Float, { description: 'The chance that was stated, 0 to 1.' })
  stated!: number;

  @Field(() => Float, { description: 'The share of tasks that took no longer, 0 to 1.' })
  observed!: number;

  @Field(() => Float, { description: 'One standard error of the share, were the chance right.' })
  standardError!: number;
}

@ObjectType({
  description:
    'What the forecasts would have said of each finished task, knowing only what was finished before it, and how often they were right.',
  simpleResolvers: true,
})
export class BackTest {
  @Field(() => BackTestVerdict, { description: 'Whether the p80s held as often as they should.' })
  verdict!: keyof typeof BackTestVerdict;

  @Field(() => Int, { description: 'Finished tasks that were forecast anew.' })
  tasks!: number;

  @Field(() => [CalibrationPoint], { description: 'Stated chances against observed shares.' })
  curve!: CalibrationPoint[];

  @Field(() => Float, {
    description: 'Mean pinball loss of the calibrated forecasts, in hours: the less the better.',
  })
  pinballHours!: number;

  @Field(() => Float, { description: 'The same for the estimates as entered, in hours.' })
  uncalibratedPinballHours!: number;
}

@ObjectType({
  description: 'What the collector’s finished tasks say of the estimates.',
  simpleResolvers: true,
})
export class Calibration {
  @Field(() => Int, { description: 'Finished tasks with hours: the latest 500 at the most.' })
  tasks!: number;

  @Field(() => Float, {
    nullable: true,
    description: 'Geometric mean of actual over typical hours, of all of them; null without any.',
  })
  rawRatio!: number | null;

  @Field(() => Float, { description: 'How much that counts, 0 to 1; the rest is 1: as estimated.' })
  weight!: number;

  @Field(() => Float, {
    description: 'What estimates of a kind without history are multiplied by.',
  })
  multiplier!: number;

  @Field(() => Float, { description: 'The multiplier is above this with a chance of 97.5 %.' })
  multiplierLow!: number;

  @Field(() => Float, { description: 'The multiplier is below this with a chance of 97.5 %.' })
  multiplierHigh!: number;

  @Field(() => [KindCalibration], { description: 'By kind of work, the most tasks first.' })
  kinds!: KindCalibration[];

  @Field(() => BackTest, { description: 'Whether the forecasts held.' })
  backTest!: BackTest;

  @Field(() => Basis, { description: 'What was counted, and how.' })
  basis!: Basis;
}
