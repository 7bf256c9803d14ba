import { Button } from '../../parts/Button.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import form from '../../parts/Form.module.css';
import { BuyLineFields } from './BuyLineFields.js';
import { newLine, type BuyLine } from './buyDraft.js';
import type { BuyParts } from './BuyTerms.js';

/** What was in the lot, one thing a line. */
export function BuyLines({ draft, change, problems, currency }: BuyParts & { currency: string }) {
  const { buy, intake } = useTexts();
  const { lines, spreadMethod } = draft;
  const put = (next: readonly BuyLine[]) => {
    change({ lines: next });
  };
  const ofLines = problems.filter(({ path }) => path[0] === 'lines');
  return (
    <>
      {lines.map((line, index) => (
        <fieldset key={line.key} className={form['line']}>
          <legend>{buy.line(index + 1)}</legend>
          <BuyLineFields
            line={line}
            spreadMethod={spreadMethod}
            currency={currency}
            problems={problems}
            path={['lines', String(index)]}
            change={(changes) => {
              put(lines.map((one) => (one.key === line.key ? { ...one, ...changes } : one)));
            }}
          />
          {lines.length > 1 && (
            <div>
              <Button
                weight="quiet"
                onClick={() => {
                  put(lines.filter(({ key }) => key !== line.key));
                }}
              >
                {intake.drop}
              </Button>
            </div>
          )}
        </fieldset>
      ))}
      <ProblemsElsewhere
        problems={ofLines}
        shown={lines.map((_line, index) => ['lines', String(index)])}
      />
      <div>
        <Button
          onClick={() => {
            put([...lines, newLine()]);
          }}
        >
          {buy.addLine}
        </Button>
      </div>
    </>
  );
}
