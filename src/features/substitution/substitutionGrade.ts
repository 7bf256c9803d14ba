import { describedEnum } from '../../api/kit/describedEnum.js';

export const SubstitutionGrade = describedEnum(
  'SubstitutionGrade',
  'How well a part type stands in for another.',
  {
    DIRECT: 'It fits and works as it is.',
    PARALLEL_HEATERS_ONLY: 'As it is where heaters are in parallel; not in a series string.',
    WITH_CHANGES: 'It fits; something must be adjusted or watched.',
    LAST_RESORT: 'It keeps the set going until the right part is found.',
  },
);
export type SubstitutionGrade = keyof typeof SubstitutionGrade;

export const HeaterSupply = describedEnum('HeaterSupply', 'How the heaters of a set are fed.', {
  PARALLEL: 'Each heater across the supply.',
  SERIES: 'One current through all of them.',
});
export type HeaterSupply = keyof typeof HeaterSupply;
