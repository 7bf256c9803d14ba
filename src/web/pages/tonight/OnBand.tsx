import { useLiveQuery } from '../../api/useLiveQuery.js';
import { OnBandDocument, type OnBandQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTexts } from '../../texts/textsContext.js';
import { Allocation } from './Allocation.js';
import { spaced } from './bandsOf.js';
import { LeftOut } from './LeftOut.js';
import { OnTheAir } from './OnTheAir.js';
import styles from './TonightPage.module.css';

type Able = OnBandQuery['onAir']['rigs'][number];

/** The sets that can be on the band, mode and power asked for this evening; why the others cannot. */
export function OnBand({
  band,
  mode,
  watts,
}: {
  band: string;
  mode: string;
  watts: number | null;
}) {
  const { tonight } = useTexts();
  const formats = useFormats();
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: OnBandDocument,
    variables: { band, mode, atLeastWatts: watts },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  if (!data) return <Loading />;
  const { rigs, leftOut, allocation, licenceNotice, at, basis } = data.onAir;
  const asked = [spaced(band), mode, watts !== null && tonight.fromWatts(formats.number(watts))]
    .filter(Boolean)
    .join(', ');
  const powerOf = ({ watts: power, restsOn, reading }: Able): string =>
    power === null
      ? tonight.noPower
      : `${formats.number(power)} W, ${
          restsOn === 'READING' && reading
            ? tonight.powerRead(formats.day(reading.takenAt))
            : tonight.powerOfModel
        }`;
  return (
    <>
      <section aria-labelledby="on-the-band">
        <h2 id="on-the-band" className={styles['head']}>
          {tonight.onBand(asked, rigs.length)}
          <BasisButton of={asked} basis={basis} />
        </h2>
        <p className={styles['licence']}>{licenceNotice}</p>
        <Allocation band={band} allocation={allocation} />
        <p className={styles['licence']}>{tonight.heldUntil(formats.minute(at))}</p>
        {rigs.length > 0 ? (
          <OnTheAir
            sets={rigs.map((able) => ({
              ...able,
              what: [powerOf(able), !able.isAtOnce && tonight.onlyAlone]
                .filter(Boolean)
                .join(' · '),
            }))}
          />
        ) : (
          <Notice title={tonight.noneOnBand(asked)} help={tonight.noneOnBandHelp} />
        )}
      </section>
      <LeftOut title={tonight.leftOutOf(asked)} leftOut={leftOut} />
    </>
  );
}
