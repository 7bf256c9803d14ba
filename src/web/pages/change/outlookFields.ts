import type { ConditionStandard, SetItemOutlookInput } from '../../gql/graphql.js';
import { writtenAmount } from '../../locale/writtenAmount.js';
import type { ChangedSet } from './ChangePage.js';

export type OutlookFieldName =
  'presentStandard' | 'successPercent' | 'premium' | 'currency' | 'premiumReason';
type OutlookFields = Record<OutlookFieldName, string>;

export const standards: readonly ConditionStandard[] = [
  'NOT_WORKING',
  'WORKING',
  'WORKING_AND_CLEAN',
  'AS_MADE',
  'FOR_SHOW',
];

export const isStandard = (value: string): value is ConditionStandard =>
  (standards as readonly string[]).includes(value);

/** What the owner said, each field as text. */
export const outlookFields = (
  outlook: ChangedSet['outlook'],
  homeCurrency: string,
): OutlookFields => ({
  presentStandard: outlook?.presentStandard ?? '',
  successPercent: String(outlook?.successPercent ?? ''),
  premium: outlook?.premium?.amount ?? '',
  currency: outlook?.premium?.currency ?? homeCurrency,
  premiumReason: outlook?.premiumReason ?? '',
});

/**
 * What was changed, as the API takes it: an amount and its currency go together.
 * @returns null when the amount cannot be read
 */
export function outlookInput(
  changes: Partial<OutlookFields>,
  whole: OutlookFields,
): Omit<SetItemOutlookInput, 'itemId' | 'version'> | null {
  const { presentStandard, successPercent, premiumReason } = changes;
  const isMoney = changes.premium !== undefined || changes.currency !== undefined;
  const typed = whole.premium.trim();
  const amount = typed === '' ? null : writtenAmount(typed);
  if (isMoney && typed !== '' && amount === null) return null;
  const premium =
    amount === null ? null : { amount, currency: whole.currency.trim().toUpperCase() };
  return {
    ...(presentStandard !== undefined && {
      presentStandard: isStandard(presentStandard) ? presentStandard : null,
    }),
    ...(successPercent !== undefined && {
      successPercent: successPercent === '' ? null : Number(successPercent),
    }),
    ...(premiumReason !== undefined && { premiumReason: premiumReason.trim() || null }),
    ...(isMoney && { premium }),
  };
}
