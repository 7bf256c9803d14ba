import type { Decimal } from './decimal.js';

/** A decimal in plain notation without needless zeros: 5210, 0.3, -12.05. */
export function decimalText({ coefficient, decimals }: Decimal): string {
  const sign = coefficient < 0n ? '-' : '';
  const digits = String(coefficient < 0n ? -coefficient : coefficient).padStart(decimals + 1, '0');
  const whole = digits.slice(0, digits.length - decimals);
  const fraction = digits.slice(digits.length - decimals).replace(/0+$/, '');
  return fraction === '' ? `${sign}${whole}` : `${sign}${whole}.${fraction}`;
}
