import type { MetricFamily, MetricSample } from './metricFamily.js';

export const openMetricsType = 'application/openmetrics-text; version=1.0.0; charset=utf-8';

const suffixes = { gauge: '', counter: '_total', info: '_info' } as const;

/**
 * Metrics in the text format of OpenMetrics 1.0.0 (the specification's “Text format” and its ABNF):
 * each family once, with its lines together, and `# EOF` at the end, without which nothing counts.
 */
export const openMetricsText = (families: readonly MetricFamily[]): string =>
  [...families.flatMap(linesOf), '# EOF', ''].join('\n');

function linesOf({ name, type, unit, help, samples }: MetricFamily): string[] {
  return [
    `# TYPE ${name} ${type}`,
    ...(unit === undefined ? [] : [`# UNIT ${name} ${unit}`]),
    `# HELP ${name} ${escaped(help)}`,
    ...samples.map((sample) => `${name}${suffixes[type]}${labelsOf(sample)} ${sample.value}`),
  ];
}

function labelsOf({ labels = {} }: MetricSample): string {
  const pairs = Object.entries(labels).map(([key, value]) => `${key}="${escaped(value)}"`);
  return pairs.length === 0 ? '' : `{${pairs.join(',')}}`;
}

const escaped = (text: string): string =>
  text.replaceAll('\\', '\\\\').replaceAll('\n', '\\n').replaceAll('"', '\\"');
