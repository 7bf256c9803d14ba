import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { onItsWay, type OpenOrder } from '../../src/domain/parts/openOrder.js';

const order = (own: Partial<OpenOrder>): OpenOrder => ({
  id: 'one',
  partTypeId: null,
  description: null,
  designators: [],
  quantity: 1,
  ...own,
});

describe('what is on its way', () => {
  it('counts an order without places for its part, one with places for these', () => {
    const asked = { partTypeId: 'tube', description: null, designators: ['V1', 'V2'] };
    expect(onItsWay(asked, [order({ partTypeId: 'tube', quantity: 4 })]).quantity).toBe(4);
    expect(onItsWay(asked, [order({ partTypeId: 'other', quantity: 4 })]).quantity).toBe(0);
    // Another type, but for this place: what stands in counts too.
    const standIn = order({ partTypeId: 'other', designators: ['V2'], quantity: 2 });
    expect(onItsWay(asked, [standIn]).quantity).toBe(2);
    expect(onItsWay(asked, [order({ partTypeId: 'tube', designators: ['V9'] })]).quantity).toBe(0);
    const words = { partTypeId: null, description: 'Dial  lamp', designators: [] };
    expect(onItsWay(words, [order({ description: 'dial lamp' })]).quantity).toBe(1);
  });

  it('never counts one order for more pieces than it has, however its places are spread', () => {
    const places = ['C1', 'C2', 'C3', 'C4', 'C5'];
    fc.assert(
      fc.property(
        fc.subarray(places, { minLength: 1 }),
        fc.nat(5),
        fc.integer({ min: 0, max: 5 }),
        (designators, spares, cut) => {
          const one = order({ designators, quantity: designators.length + spares });
          const lines = [places.slice(0, cut), places.slice(cut)];
          const counted = lines.map(
            (own) =>
              onItsWay({ partTypeId: null, description: null, designators: own }, [one]).quantity,
          );
          expect(counted.reduce((sum, next) => sum + next, 0)).toBeLessThanOrEqual(one.quantity);
        },
      ),
    );
  });
});
