/** The record that a name in a list stands for, or why that is not clear. */
export type FoundName = { id: string } | { why: string };
