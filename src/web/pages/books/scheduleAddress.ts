export interface ScheduleOf {
  which: 'ALL' | 'PLACE' | 'CHOSEN';
  /** Name of the place; what stands within it counts too. */
  place: string;
  /** Inventory numbers. */
  numbers: string[];
}

/** Where the server hands out the schedule that is asked for. */
export function scheduleAddress(
  { which, place, numbers }: ScheduleOf,
  format: 'pdf' | 'csv',
): string {
  const query = new URLSearchParams({
    ...(which === 'PLACE' && { place }),
    ...(which === 'CHOSEN' && { items: numbers.join(',') }),
  }).toString();
  return `/download/insurance-schedule.${format}${query && `?${query}`}`;
}
