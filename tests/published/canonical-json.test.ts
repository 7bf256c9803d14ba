// cspell:words Dalet Dagesh
import { describe, expect, it } from 'vitest';
import { canonicalJson } from '../../src/domain/history/canonicalJson.js';

/** RFC 8785, JSON Canonicalization Scheme (June 2020). */
describe('canonical JSON', () => {
  it('writes the example of sections 3.2.2 and 3.2.4', () => {
    const input = JSON.parse(
      String.raw`{
        "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
        "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
        "literals": [null, true, false]
      }`,
    ) as unknown;
    const written = canonicalJson(input);
    expect(written).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  it('sorts names by UTF-16 code units, as section 3.2.3 shows', () => {
    const named = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    };
    expect(Object.values(JSON.parse(canonicalJson(named)) as object)).toHaveLength(7);
    const order = [...canonicalJson(named).matchAll(/:"([^"]*)"/g)].map(([, value]) => value);
    // "1" is an index of a JavaScript object; in the text it stands where the RFC puts it.
    expect(order).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });
});
