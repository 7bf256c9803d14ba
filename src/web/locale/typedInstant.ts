/**
 * The instant of a day and time typed in this device's zone, as the API takes it.
 * @returns null for nothing typed: the API then takes the present
 */
export function typedInstant(typed: string): string | null {
  const at = new Date(typed);
  return typed === '' || Number.isNaN(at.getTime()) ? null : at.toISOString();
}
