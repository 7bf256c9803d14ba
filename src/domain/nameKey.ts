/** The same name however it was capitalised or spaced: "Leakage  current", "leakage current". */
export const nameKey = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();
