import { describe, expect, it } from 'vitest';

const record: PropertyDecorator & MethodDecorator = () => undefined;

class Tube {
  @record heaterVolts!: number;
  @record designation!: string;
  @record fittedAt!: Date;
  @record replacedBy(_tube: Tube): boolean {
    return true;
  }
}

const metadataOf = (key: string, property: keyof Tube): unknown =>
  Reflect.getMetadata(key, Tube.prototype, property);

describe('the tests are compiled as the program is', () => {
  it('with the types of decorated members, which typeorm and type-graphql read', () => {
    expect(metadataOf('design:type', 'heaterVolts')).toBe(Number);
    expect(metadataOf('design:type', 'designation')).toBe(String);
    expect(metadataOf('design:type', 'fittedAt')).toBe(Date);
    expect(metadataOf('design:returntype', 'replacedBy')).toBe(Boolean);
    expect(metadataOf('design:paramtypes', 'replacedBy')).toEqual([Tube]);
  });
});
