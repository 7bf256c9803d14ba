import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import type { Checklist } from '../../db/checklist.js';
import type { TreatmentOverrideInput } from './treatment.inputs.js';

/** Who answers for agents that must not meet, and why. */
export async function readOverride(
  check: Checklist,
  override: TreatmentOverrideInput | null | undefined,
): Promise<{ overrideReason: string | null; overriddenById: string | null }> {
  if (!override) return { overrideReason: null, overriddenById: null };
  const overriddenById = checkedRecordId(check, 'Party', override.byId, ['override', 'byId']);
  await check.exists('party', overriddenById, ['override', 'byId']);
  const overrideReason = check.words(override.reason, ['override', 'reason'], 2000);
  return { overrideReason, overriddenById };
}
