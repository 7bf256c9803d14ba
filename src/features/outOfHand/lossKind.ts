import { describedEnum } from '../../api/kit/describedEnum.js';

export const LossKind = describedEnum('LossKind', 'How an item went missing.', {
  STOLEN: 'It was taken.',
  LOST: 'It cannot be found.',
  DESTROYED: 'It is there no more: fire, water, a fall.',
});
export type LossKind = keyof typeof LossKind;

export const LoanDirection = describedEnum('LoanDirection', 'Which way a thing is lent.', {
  OUT: 'It is ours and with a borrower.',
  IN: 'It is somebody else’s and with us.',
});
export type LoanDirection = keyof typeof LoanDirection;

export const DisposalKind = describedEnum('DisposalKind', 'How items left for good.', {
  SOLD: 'For money.',
  GIVEN: 'As a gift.',
  EXCHANGED: 'For other things; the price is what they were taken to be worth.',
  SCRAPPED: 'Taken apart or thrown away, after local rules for its matter.',
});
export type DisposalKind = keyof typeof DisposalKind;

export const Whereabouts = describedEnum('Whereabouts', 'Whether an item is at hand.', {
  AT_HAND: 'In the collection, as far as is recorded.',
  LENT: 'With a borrower.',
  LENT_TO_US: 'At hand, and lent to us: it goes back to whose it is.',
  STOLEN: 'It was taken.',
  LOST: 'It cannot be found.',
  DESTROYED: 'It is there no more.',
  DISPOSED_OF: 'It left for good; its record stays.',
});
export type Whereabouts = keyof typeof Whereabouts;
