import { describedEnum } from '../../api/kit/describedEnum.js';

export const PlannedCostKind = describedEnum(
  'PlannedCostKind',
  'What sort of cost is still to come.',
  {
    PART: 'A part that no prices are noted for.',
    SERVICE: 'Work that somebody else does: rewinding, plating, alignment.',
    CONSUMABLE: 'What is used up: solder, cleaner, lacquer, wire.',
    CARRIAGE: 'Carriage, duty, travel.',
    OTHER: 'None of the others.',
  },
);
export type PlannedCostKind = keyof typeof PlannedCostKind;
