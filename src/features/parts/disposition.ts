import { describedEnum } from '../../api/kit/describedEnum.js';

export const Disposition = describedEnum('Disposition', 'Where a removed part went.', {
  KEPT: 'Kept with the papers of the set.',
  STOCK: 'To the shelf of spares.',
  MOVED: 'To another set.',
  BINNED: 'Thrown away, after local rules for its matter.',
  RETURNED: 'Back to whoever sold it.',
  UNKNOWN: 'Not recorded.',
});
export type Disposition = keyof typeof Disposition;
