import { Link } from '@tanstack/react-router';
import type { BooksQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { figureCell, Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';

/** The restorations with the hours given to each, the most first. */
export function ProjectHours({ projects }: { projects: BooksQuery['projects']['nodes'] }) {
  const { books, set, shelf, words } = useTexts();
  const formats = useFormats();
  if (projects.length === 0) return <p>{set.noProjects}</p>;
  return (
    <Table
      name={books.hoursByProject}
      head={
        <tr>
          <th scope="col">{books.project}</th>
          <th scope="col">{shelf.columns.standing}</th>
          <th scope="col" className={figureCell}>
            {shelf.columns.completion}
          </th>
          <th scope="col" className={figureCell}>
            {shelf.columns.hours}
          </th>
        </tr>
      }
    >
      {[...projects]
        .sort((one, other) => other.hours.hours - one.hours.hours)
        .map(({ id, title, status, item, hours, completion }) => (
          <tr key={id}>
            <th scope="row">
              <Link to="/sets/$number" params={{ number: item.inventoryNumber }}>
                {item.inventoryNumber}
              </Link>{' '}
              {title}
            </th>
            <td>{words.projectStatus[status]}</td>
            <td className={figureCell}>
              {completion.share === null ? '–' : formats.share(completion.share)}
            </td>
            <td className={figureCell}>{formats.hours(hours.hours)}</td>
          </tr>
        ))}
    </Table>
  );
}
