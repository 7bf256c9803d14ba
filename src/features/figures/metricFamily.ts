/** A family of metrics in the words of OpenMetrics 1.0.0. */
export interface MetricFamily {
  name: string;
  type: 'gauge' | 'counter' | 'info';
  /** A suffix of the name; left out where there is none. */
  unit?: 'seconds' | 'ratio';
  help: string;
  samples: readonly MetricSample[];
}

export interface MetricSample {
  labels?: Readonly<Record<string, string>>;
  /** A number, or an exact decimal as text. */
  value: number | string;
}
