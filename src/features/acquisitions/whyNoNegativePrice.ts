export const whyNoNegativePrice =
  'What a lot cost cannot be below zero: write zero for a gift. ' +
  'Money that came back later is an expense below zero on the item.';
