import { describedEnum } from '../../api/kit/describedEnum.js';

export const PriceKind = describedEnum('PriceKind', 'What sort of price was noted.', {
  ASKED: 'It was asked for at that price.',
  SOLD: 'It went to somebody at that price.',
  PAID: 'The collector paid it.',
});
export type PriceKind = keyof typeof PriceKind;
