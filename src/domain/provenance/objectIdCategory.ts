/**
 * The nine categories by which an object can be told from all others.
 * Source: ICOM, Object ID international standard (archives.icom.museum/object-id).
 */
export const objectIdCategories = [
  'TYPE_OF_OBJECT',
  'MATERIALS_AND_TECHNIQUES',
  'MEASUREMENTS',
  'INSCRIPTIONS_AND_MARKINGS',
  'DISTINGUISHING_FEATURES',
  'TITLE',
  'SUBJECT',
  'DATE_OR_PERIOD',
  'MAKER',
] as const;

export type ObjectIdCategory = (typeof objectIdCategories)[number];
