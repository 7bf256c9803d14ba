/** Said when a ceiling is below zero. */
export const whyCeiling = 'A ceiling is what you would pay at most: give zero or more.';
