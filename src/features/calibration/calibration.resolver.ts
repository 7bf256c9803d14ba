import type { GraphQLResolveInfo } from 'graphql';
import { Arg, FieldResolver, Info, Int, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { defaultPageSize } from '../../api/kit/pageArgs.js';
import { Collection } from '../collection/collection.type.js';
import { Task } from '../tasks/task.type.js';
import { Calibration, EstimateEvidence } from './calibration.type.js';

/** Five hundred tasks forecast anew, each at ten chances. */
const priceOfHistory = 5000;

@Resolver(() => Collection)
export class CalibrationOfCollectionResolver {
  @FieldResolver(() => Calibration, {
    description: 'What the finished tasks say of the estimates, and whether the forecasts held.',
    complexity: ({ childComplexity }) => priceOfHistory + childComplexity,
  })
  calibration(@Root() collection: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(collection, info);
  }
}

@Resolver(() => Calibration)
export class CalibrationResolver {
  @FieldResolver(() => [EstimateEvidence], {
    description: 'The finished tasks that it rests on, the latest first.',
  })
  evidence(
    @Root() calibration: object,
    @Arg('first', () => Int, {
      defaultValue: defaultPageSize,
      description: 'How many at the most, from 1 to 100.',
    })
    _first: number,
    @Info() info: GraphQLResolveInfo,
  ) {
    return loadedField(calibration, info);
  }
}

@Resolver(() => EstimateEvidence)
export class EstimateEvidenceResolver {
  @FieldResolver(() => Task, { description: 'The task.' })
  task(@Root() evidence: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(evidence, info);
  }
}
