/** Figures of tubes as published: by source (a key of seed/reference/sources.yaml), by tube, by field. */
export type PublishedFigures = Record<string, Record<string, Record<string, number | string>>>;
