import type { ShownProblem } from '../../api/useSend.js';
import type { ShownBringUpFragment, StepReadingInput } from '../../gql/graphql.js';
import type { Texts } from '../../texts/texts.js';
import { typedNumber } from '../../locale/typedNumber.js';

export type RunStep = ShownBringUpFragment['steps'][number];
export type StepPlan = RunStep['plan'];

export interface TypedReading {
  quantity: string;
  value: string;
  instrument: string;
  note: string;
}

/** What is typed of a step: answers not given yet are null. */
export interface StepAnswers {
  holds: (boolean | null)[];
  readings: TypedReading[];
  note: string;
}

export const noReading = (quantity: string): TypedReading => ({
  quantity,
  value: '',
  instrument: '',
  note: '',
});

export const noAnswers = (plan: StepPlan): StepAnswers => ({
  holds: plan.statements.map(() => null),
  readings: plan.readings.map(({ quantity }) => noReading(quantity)),
  note: '',
});

/** What is recorded of a step, as it would have been typed. */
export const answersOf = ({ plan, holds, readings, note }: RunStep): StepAnswers => ({
  holds: plan.statements.map((_, index) => holds[index] ?? null),
  readings: plan.readings.flatMap(({ quantity }) => {
    const own = readings.filter((reading) => reading.quantity === quantity);
    return own.length === 0
      ? [noReading(quantity)]
      : own.map((reading) => ({
          quantity,
          value: reading.value,
          instrument: reading.instrument ?? '',
          note: reading.note ?? '',
        }));
  }),
  note: note ?? '',
});

const isTyped = ({ value, instrument, note }: TypedReading): boolean =>
  [value, instrument, note].some((text) => text.trim() !== '');

/** A second reading of a quantity that was left empty is not sent. */
const readingsToSend = ({ readings }: StepAnswers): TypedReading[] => readings.filter(isTyped);

/** The place of each typed reading among those that are sent, to find its problems by. */
export const placeOfReading = (answers: StepAnswers, index: number): number =>
  answers.readings.slice(0, index).filter(isTyped).length;

/** What cannot be sent as it is: an answer that is missing, a value that is no number. */
export function unreadyAnswers(
  plan: StepPlan,
  answers: StepAnswers,
  { bringUp }: Pick<Texts, 'bringUp'>,
): ShownProblem[] {
  const problem = (message: string, ...path: string[]): ShownProblem => ({
    code: 'INVALID',
    isOfPage: true,
    message,
    path,
  });
  const sent = readingsToSend(answers);
  return [
    ...answers.holds.flatMap((holds, index) =>
      holds === null ? [problem(bringUp.answerIt, 'holds', String(index))] : [],
    ),
    ...sent.flatMap(({ value }, index) =>
      typedNumber(value) === null
        ? [problem(bringUp.noNumber, 'readings', String(index), 'value')]
        : [],
    ),
    ...plan.readings.flatMap(({ quantity }) =>
      sent.some((reading) => reading.quantity === quantity)
        ? []
        : [problem(bringUp.readIt, 'unread', quantity)],
    ),
  ];
}

/** The answers as the API takes them, once nothing is missing. */
export function stepInput(
  plan: StepPlan,
  answers: StepAnswers,
): { holds: boolean[]; readings: StepReadingInput[]; note: string | null } {
  return {
    holds: answers.holds.map((holds) => holds === true),
    readings: readingsToSend(answers).map(({ quantity, value, instrument, note }) => ({
      quantity,
      value: typedNumber(value) ?? value,
      unit: plan.readings.find((asked) => asked.quantity === quantity)?.unit ?? '',
      instrument: instrument.trim() || null,
      note: note.trim() || null,
    })),
    note: answers.note.trim() || null,
  };
}
