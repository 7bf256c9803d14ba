import { describe, expect, it } from 'vitest';
import { openMetricsText, openMetricsType } from '../../src/features/figures/openMetricsText.js';
import { readOpenMetrics } from '../support/openMetricsGrammar.js';

// OpenMetrics 1.0.0 (2020-11-27), https://github.com/prometheus/OpenMetrics,
// specification/OpenMetrics.md: “Text format”, its ABNF and “Escaping”; the media type from
// “Protocol Negotiation” and “Text format”.
describe('the text format of OpenMetrics', () => {
  it('has the media type of its version', () => {
    expect(openMetricsType).toBe('application/openmetrics-text; version=1.0.0; charset=utf-8');
  });

  it('writes type, unit, help and samples of each family together, and # EOF last', () => {
    expect(
      openMetricsText([
        {
          name: 'a_seconds',
          type: 'gauge',
          unit: 'seconds',
          help: 'H.',
          samples: [{ value: 1.5 }],
        },
        { name: 'b', type: 'counter', help: 'C.', samples: [{ labels: { x: 'y' }, value: 3 }] },
        { name: 'c', type: 'info', help: 'I.', samples: [{ labels: { v: '1' }, value: 1 }] },
      ]),
    ).toBe(
      [
        '# TYPE a_seconds gauge',
        '# UNIT a_seconds seconds',
        '# HELP a_seconds H.',
        'a_seconds 1.5',
        '# TYPE b counter',
        '# HELP b C.',
        'b_total{x="y"} 3',
        '# TYPE c info',
        '# HELP c I.',
        'c_info{v="1"} 1',
        '# EOF',
        '',
      ].join('\n'),
    );
    expect(openMetricsText([])).toBe('# EOF\n');
  });

  it('carries any text in a label and brings it back', () => {
    const value = 'a "quoted" back\\slash\nand a second line {,}=é';
    const text = openMetricsText([
      { name: 'odd', type: 'gauge', help: value, samples: [{ labels: { value }, value: 0 }] },
    ]);
    expect(text.split('\n')).toHaveLength(5);
    expect(readOpenMetrics(text).get('odd')?.samples).toEqual([
      { name: 'odd', labels: { value }, value: 0 },
    ]);
  });

  it.each([
    ['no end', '# TYPE a gauge\na 1\n'],
    ['an empty line', '# TYPE a gauge\n\na 1\n# EOF\n'],
    ['a counter without _total', '# TYPE a counter\na 1\n# EOF\n'],
    ['a family torn apart', '# TYPE a gauge\na 1\n# TYPE b gauge\nb 1\n# HELP a x\n# EOF\n'],
    ['a unit that is no suffix', '# TYPE a gauge\n# UNIT a seconds\na 1\n# EOF\n'],
    ['the same labels twice', '# TYPE a gauge\na{x="1"} 1\na{x="1"} 2\n# EOF\n'],
    ['a sign not escaped', '# TYPE a gauge\na{x="\\q"} 1\n# EOF\n'],
  ])('is read strictly: %s is refused', (_what, text) => {
    expect(() => readOpenMetrics(text)).toThrow();
  });
});
