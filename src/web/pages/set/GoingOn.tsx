import { useLiveQuery } from '../../api/useLiveQuery.js';
import { GoingOnDocument } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { figureCell, Table } from '../../parts/Table.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';

/** Each thing that could be done from here, with its arithmetic; the person decides. */
export function GoingOn({ id, title }: { id: string; title: string }) {
  const { set, words } = useTexts();
  const formats = useFormats();
  const [{ data, error }, fetchAgain] = useLiveQuery({ query: GoingOnDocument, variables: { id } });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  const goingOn = data?.node && 'goingOn' in data.node ? data.node.goingOn : null;
  if (!goingOn) return null;
  return (
    <section>
      <h3>
        {set.goingOn(title)}
        <BasisButton of={set.goingOn(title)} basis={goingOn.basis} />
      </h3>
      <p {...fromApi}>{goingOn.explanation}</p>
      {goingOn.problems.map(({ message }) => (
        <p key={message} {...fromApi}>
          {message}
        </p>
      ))}
      {goingOn.choices.length > 0 && (
        <Table
          name={set.goingOn(title)}
          head={
            <tr>
              <th scope="col">{set.choice}</th>
              {[set.worthThen, set.costFromHere, set.premium, set.gain].map((name) => (
                <th key={name} scope="col" className={figureCell}>
                  {name}
                </th>
              ))}
            </tr>
          }
        >
          {goingOn.choices.map(({ kind, standard, worth, costToCome, premium, gain }) => (
            <tr key={kind + (standard ?? '')}>
              <th scope="row">
                {words.choice[kind]}
                {standard && `: ${words.conditionStandard[standard]}`}
              </th>
              {[worth, costToCome, premium, gain].map((amount, index) => (
                <td key={index} className={figureCell}>
                  {formats.money(amount)}
                </td>
              ))}
            </tr>
          ))}
        </Table>
      )}
      {goingOn.sunkCost && <p>{set.sunk(formats.money(goingOn.sunkCost))}</p>}
      {goingOn.premiumReason && <p>{set.premiumBecause(goingOn.premiumReason)}</p>}
      {goingOn.nextStep && (
        <p>
          {set.worthAsking(goingOn.nextStep.description, formats.money(goingOn.nextStep.netGain))}
        </p>
      )}
    </section>
  );
}
