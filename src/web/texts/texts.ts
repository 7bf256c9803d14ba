import type { en } from './en.js';

/** What a language must have: every text of the English catalogue, taking the same values. */
export type Texts = Widened<typeof en>;

type Widened<T> = T extends string
  ? string
  : T extends (...given: infer A) => string
    ? (...given: A) => string
    : { readonly [K in keyof T]: Widened<T[K]> };
