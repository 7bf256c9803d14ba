import { Arg, Query, Resolver } from 'type-graphql';
import { amateurBands } from './amateurBands.js';
import { ItuRegion } from './ituRegion.js';
import { AmateurBandType } from './reference.type.js';

@Resolver()
export class BandsResolver {
  @Query(() => [AmateurBandType], {
    description: 'Bands of the amateur service, from the longest wavelength.',
  })
  bands(
    @Arg('region', () => ItuRegion, {
      nullable: true,
      description: 'Only this region; all three if left out.',
    })
    region?: ItuRegion | null,
  ) {
    return amateurBands
      .map((band) => ({ ...band, region: `REGION_${band.region}` as const }))
      .filter((band) => !region || band.region === region);
  }
}
