/** The names that are there, as a class attribute. */
export const classNames = (...names: (string | false | undefined)[]): string =>
  names.filter(Boolean).join(' ');
