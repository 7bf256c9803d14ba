import { GraphQLError, GraphQLScalarType, Kind } from 'graphql';

const decimal = /^[+-]?\d{1,30}(\.\d{1,30})?$/;

function checked(value: unknown): string {
  const text = typeof value === 'number' ? String(value) : value;
  if (typeof text === 'string' && decimal.test(text)) return text;
  throw new GraphQLError(
    `"${String(value).slice(0, 40)}" is not a decimal number. Write it with a point and without separators, such as "1234.50".`,
    { extensions: { code: 'BAD_USER_INPUT' } },
  );
}

/** An exact decimal, kept as it was written. */
export const DecimalScalar = new GraphQLScalarType<string, string>({
  name: 'Decimal',
  description: 'An exact decimal number as text, with a point and no separators: "0.30".',
  serialize: String as (value: unknown) => string,
  parseValue: checked,
  parseLiteral: (node) =>
    checked(
      node.kind === Kind.STRING || node.kind === Kind.INT || node.kind === Kind.FLOAT
        ? node.value
        : node.kind,
    ),
});
