import { registerEnumType } from 'type-graphql';

/**
 * A list of words for the schema, each with the sentence that says when it is given.
 * @returns the words as a constant whose type is the union of them.
 */
export function describedEnum<const Words extends Record<string, string>>(
  name: string,
  description: string,
  words: Words,
): { readonly [Word in keyof Words]: Word } {
  const values = Object.fromEntries(Object.keys(words).map((word) => [word, word]));
  registerEnumType(values, {
    name,
    description,
    valuesConfig: Object.fromEntries(
      Object.entries(words).map(([word, text]) => [word, { description: text }]),
    ),
  });
  return values as { readonly [Word in keyof Words]: Word };
}
