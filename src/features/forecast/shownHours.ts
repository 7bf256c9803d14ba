import type { HoursOfTrials } from '../../domain/forecast/summarise.js';
import { hundredths } from '../standing/standingFacts.js';
import type { HoursForecast } from './projectForecast.type.js';

export const thousandths = (value: number): number => Math.round(value * 1000) / 1000;

/** Hours of trials as the API shows them; errors to the thousandth. */
export const shownHours = (told: HoursOfTrials): HoursForecast => ({
  expectedHours: hundredths(told.expectedHours),
  p50Hours: hundredths(told.p50Hours),
  p80Hours: hundredths(told.p80Hours),
  p95Hours: hundredths(told.p95Hours),
  varianceHours: thousandths(told.varianceHours),
  meanStandardErrorHours: thousandths(told.standardError.meanHours),
  p80StandardErrorHours: thousandths(told.standardError.p80Hours),
  varianceStandardErrorHours: thousandths(told.standardError.varianceHours),
});
