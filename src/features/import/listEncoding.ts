/** How the bytes of a list are read as text; names as the Encoding Standard (WHATWG) has them. */
export const listEncodings = ['utf-8', 'windows-1252', 'utf-16le', 'utf-16be'] as const;
export type ListEncoding = (typeof listEncodings)[number];
