/** A number of hours still to come, as a distribution. */
export interface HoursLeft {
  readonly meanHours: number;
  /** Square hours. */
  readonly varianceHours: number;
  /** The hours that are not exceeded with a probability in (0, 1); above 0, rising with it. */
  hoursAt(probability: number): number;
}
