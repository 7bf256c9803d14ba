interface Point {
  at: number;
  value: number;
}

const height = 240;
const left = 56;
const bottom = height - 22;
const top = 14;
const rightRoom = 6;

/** Where times and values lie on a drawing of the width given and a height of 240. */
export function chartPlaces(points: readonly Point[], levels: readonly number[], width: number) {
  const times = points.map(({ at }) => at);
  const values = [...points.map(({ value }) => value), ...levels];
  const fromTime = Math.min(...times);
  const toTime = Math.max(...times);
  const least = Math.min(...values);
  const most = Math.max(...values);
  const room = (most - least || Math.abs(most) || 1) * 0.08;
  // A scale that nearly reaches nought starts there: bars and lines then tell no tales.
  const low = least >= 0 && least < most / 2 ? 0 : least - room;
  const high = most + room;
  return {
    x: (at: number) =>
      toTime === fromTime
        ? (left + width) / 2
        : left + ((at - fromTime) / (toTime - fromTime)) * (width - rightRoom - left),
    y: (value: number) => bottom - ((value - low) / (high - low)) * (bottom - top),
    width,
    height,
    left,
    top,
    bottom,
    fromTime,
    toTime,
    low,
    high,
  };
}

/** Three to six round values between two, for the grid. */
export function roundSteps(low: number, high: number): number[] {
  const raw = (high - low) / 5;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((each) => each * power).find((each) => each >= raw) ?? raw;
  const steps = [];
  for (let value = Math.ceil(low / step) * step; value <= high; value += step) {
    // Free of what binary fractions leave behind: 0.30000000000000004.
    steps.push(Number(value.toPrecision(12)));
  }
  return steps;
}
