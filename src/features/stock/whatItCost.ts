/** Said when spares are given a cost below zero. */
export const whatItCost = 'Spares cost nothing or something: give zero or more.';
