/** Whether a figure lies within so large a share of another, both ways: 0.05 for 5 %. */
export const withinShare = (figure: number, of: number, share: number): boolean =>
  Math.abs(figure - of) <= share * Math.abs(of) + 1e-12;
