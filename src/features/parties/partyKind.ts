import { describedEnum } from '../../api/kit/describedEnum.js';

export const PartyKind = describedEnum('PartyKind', 'A person or an organisation.', {
  PERSON: 'One human being.',
  ORGANISATION: 'A club, a firm, an auction house, a museum.',
});
export type PartyKind = keyof typeof PartyKind;
