import type { GraphQLResolveInfo } from 'graphql';
import { Arg, Ctx, FieldResolver, Info, Mutation, Resolver, Root } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { MoneyAmount } from '../../api/kit/money.type.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { priceOfTrials } from '../forecast/priceOfTrials.js';
import { moneyAmount } from '../money/moneyAmount.js';
import { Project } from '../projects/project.type.js';
import { changeInquiry } from './changeInquiry.js';
import { GoingOn, Inquiry } from './goingOn.type.js';
import { ChangeInquiryInput, PlanInquiryInput } from './inquiry.inputs.js';
import type { InquiryEntity } from './inquiry.entity.js';
import { planInquiry } from './planInquiry.js';

const asInquiry = { field: 'inquiry', typeName: 'Inquiry' };
const payload = (mutation: string, description: string) =>
  payloadOf(mutation, 'inquiry', () => Inquiry, description);
const PlanInquiryPayload = payload('planInquiry', 'The new inquiry.');
const ChangeInquiryPayload = payload('changeInquiry', 'It as it is now.');

@Resolver(() => Inquiry)
export class InquiryResolver {
  @FieldResolver(() => MoneyAmount, { description: 'What it costs; 0 for nothing.' })
  cost(@Root() { costMinorUnits, costCurrency }: InquiryEntity) {
    return moneyAmount(costMinorUnits, costCurrency);
  }

  @FieldResolver(() => Project, { description: 'The project that it is for.' })
  project(@Root() inquiry: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(inquiry, info);
  }

  @Mutation(() => PlanInquiryPayload, { description: 'Writes down a way to find out more.' })
  planInquiry(
    @Arg('input', () => PlanInquiryInput, { description: 'The inquiry.' }) input: PlanInquiryInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asInquiry, (work) => planInquiry(work, input));
  }

  @Mutation(() => ChangeInquiryPayload, {
    description:
      'Says what came of an inquiry, or strikes out one that was written down by mistake.',
  })
  changeInquiry(
    @Arg('input', () => ChangeInquiryInput, { description: 'The change.' })
    input: ChangeInquiryInput,
    @Ctx() context: ApiContext,
    @Info() info: GraphQLResolveInfo,
  ) {
    return carryOut(context, info, asInquiry, (work) => changeInquiry(work, input));
  }
}

@Resolver(() => Project)
export class GoingOnOfProjectResolver {
  @FieldResolver(() => [Inquiry], {
    description: 'Ways to find out more, done or not, as planned; struck ones with `struckAt`.',
  })
  inquiries(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }

  @FieldResolver(() => GoingOn, {
    nullable: true,
    complexity: priceOfTrials,
    description: 'Whether it is worth going on, and up to what point.',
  })
  goingOn(@Root() project: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(project, info);
  }
}
