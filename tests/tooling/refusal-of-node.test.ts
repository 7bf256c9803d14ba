import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { refusalOfNode } from '../../src/prepare/refusalOfNode.mjs';

describe('the Node that Reglow is started with', () => {
  it.each(['20.19.0', '20.20.2', '22.13.0', '24.11.0', '25.0.0', '26.1.0'])(
    'may be %s',
    (version) => expect(refusalOfNode(version)).toBeNull(),
  );

  it.each(['14.21.3', '18.20.8', '20.18.3'])('is refused as too old when it is %s', (version) =>
    expect(refusalOfNode(version)).toMatch(/this is Node .* too old\.\nInstall .* run the same/),
  );

  it.each(['21.7.3', '22.12.0', '23.11.0', '24.10.0'])('is refused when it is %s', (version) =>
    expect(refusalOfNode(version)).toContain('Reglow needs Node'),
  );

  it('is the one that package.json asks for', () => {
    const { engines } = JSON.parse(readFileSync('package.json', 'utf8'));
    expect(engines.node).toBe('^20.19.0 || ^22.13.0 || >=24.11.0');
  });
});
