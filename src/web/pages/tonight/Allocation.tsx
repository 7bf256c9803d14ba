import type { OnBandQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { spaced } from './bandsOf.js';

/** The edges of the band in the region of the station, and how the service stands there. */
export function Allocation({
  band,
  allocation,
}: {
  band: string;
  allocation: OnBandQuery['onAir']['allocation'];
}) {
  const { tonight, words } = useTexts();
  const formats = useFormats();
  if (!allocation) return <p>{tonight.noAllocation(spaced(band))}</p>;
  const { lowerKilohertz, upperKilohertz, status, region, note } = allocation;
  const edges = `${formats.number(Number(lowerKilohertz))}–${formats.number(Number(upperKilohertz))} kHz`;
  return (
    <p>
      {tonight.allocated(edges, words.region[region], words.allocation[status])}
      {note && <span {...fromApi}> {note}.</span>}
    </p>
  );
}
