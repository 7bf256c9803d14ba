/** What a collection is taken for until its owner says otherwise. */
export const undescribedCollection = (zone: string) => ({
  name: 'My collection',
  ownerId: null,
  homeCurrency: 'EUR',
  zone,
  ituRegion: null,
  licenceClass: null,
});
