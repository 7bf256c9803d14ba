/** A line over time. */
export interface ChartLine {
  name: string;
  /** How it is drawn: never by tone alone. */
  look: 'main' | 'ahead' | 'dashed' | 'dotted' | 'thin';
  points: readonly { at: number; value: number }[];
  hasDots?: boolean;
}

/** What lies between two edges over time: hatched. */
export interface ChartBand {
  name: string;
  points: readonly { at: number; low: number; high: number }[];
}
