/** What a marking says, or why it says nothing. */
export type Decoded<Value> =
  | { readonly kind: 'read'; readonly value: Value }
  | { readonly kind: 'refused'; readonly why: string };

export const refused = (why: string): { kind: 'refused'; why: string } => ({
  kind: 'refused',
  why,
});
