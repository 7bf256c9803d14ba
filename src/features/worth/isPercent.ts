export const isPercent = (value: number): boolean => value >= 0 && value <= 100;
