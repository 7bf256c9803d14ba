const numbered = <Attributes>(of: string, all: readonly Attributes[]): Record<string, Attributes> =>
  Object.fromEntries(all.map((attributes, at) => [`_:${of}${at + 1}`, attributes]));
const made = (entity: string, activity: string, time?: string) => ({
  'prov:entity': entity,
  'prov:activity': activity,
  ...(time !== undefined && { 'prov:time': time }),
});
const used = (activity: string, entity: string) => ({
  'prov:activity': activity,
  'prov:entity': entity,
});
const derived = (generated: string, from: string, isRevision = false) => ({
  'prov:generatedEntity': generated,
  'prov:usedEntity': from,
  ...(isRevision && { 'prov:type': 'prov:Revision' }),
});
const associated = (activity: string, agent: string, role?: string) => ({
  'prov:activity': activity,
  'prov:agent': agent,
  ...(role !== undefined && { 'prov:role': role }),
});
const none = (...names: string[]) => Object.fromEntries(names.map((name) => [name, {}]));

/**
 * The running example of the PROV Model Primer (W3C Working Group Note, 30 April 2013): a chart in
 * an article is wrong, and what it was made of is traced.
 */
export const provPrimer = {
  prefix: { ex: 'http://example/', dcterms: 'http://purl.org/dc/terms/' },
  entity: {
    ...none('ex:articleV1', 'ex:articleV2', 'ex:dataSet1', 'ex:dataSet2', 'ex:regionList'),
    ...none('ex:composition', 'ex:chart1', 'ex:chart2', 'ex:blogEntry'),
    'ex:article': { 'dcterms:title': 'Crime rises in cities' },
  },
  activity: {
    ...none('ex:compile', 'ex:compile2', 'ex:compose', 'ex:illustrate'),
    'ex:correct': {
      'prov:startTime': '2012-03-31T09:21:00',
      'prov:endTime': '2012-04-01T15:21:00',
    },
  },
  agent: { 'ex:derek': { 'prov:type': 'prov:Person' }, 'ex:chartgen': {} },
  used: numbered('u', [
    used('ex:compose', 'ex:dataSet1'),
    used('ex:compose', 'ex:regionList'),
    used('ex:illustrate', 'ex:composition'),
    used('ex:correct', 'ex:dataSet1'),
  ]),
  wasGeneratedBy: numbered('g', [
    made('ex:composition', 'ex:compose'),
    made('ex:chart1', 'ex:illustrate'),
    made('ex:chart1', 'ex:compile', '2012-03-02T10:30:00'),
    made('ex:chart2', 'ex:compile2', '2012-04-01T15:21:00'),
    made('ex:dataSet2', 'ex:correct'),
  ]),
  wasAssociatedWith: numbered('a', [
    associated('ex:compose', 'ex:derek', 'ex:analyst'),
    associated('ex:illustrate', 'ex:derek'),
  ]),
  actedOnBehalfOf: numbered('b', [
    { 'prov:delegate': 'ex:derek', 'prov:responsible': 'ex:chartgen' },
  ]),
  wasAttributedTo: numbered('t', [{ 'prov:entity': 'ex:chart1', 'prov:agent': 'ex:derek' }]),
  wasDerivedFrom: numbered('d', [
    derived('ex:dataSet2', 'ex:dataSet1', true),
    derived('ex:chart2', 'ex:dataSet2'),
    derived('ex:blogEntry', 'ex:article'),
    derived('ex:articleV1', 'ex:dataSet1'),
    derived('ex:articleV2', 'ex:dataSet2'),
  ]),
  specializationOf: numbered('s', [
    { 'prov:specificEntity': 'ex:articleV1', 'prov:generalEntity': 'ex:article' },
    { 'prov:specificEntity': 'ex:articleV2', 'prov:generalEntity': 'ex:article' },
  ]),
  alternateOf: numbered('l', [
    { 'prov:alternate1': 'ex:articleV2', 'prov:alternate2': 'ex:articleV1' },
  ]),
};

/**
 * How the W3C published two drafts of PROV-DM: example 1 of PROV-DM and PROV-N in PROV-JSON
 * (`w3c-publication1`).
 */
export const provPublication = {
  prefix: {
    ex: 'http://example.org/',
    w3: 'http://www.w3.org/',
    tr: 'http://www.w3.org/TR/2011/',
    pr: 'http://www.w3.org/2005/10/Process-20051014/tr.html#',
    ar1: 'https://lists.w3.org/Archives/Member/chairs/2011OctDec/',
    ar2: 'https://lists.w3.org/Archives/Member/w3c-archive/2011Oct/',
    ar3: 'https://lists.w3.org/Archives/Member/w3c-archive/2011Dec/',
  },
  entity: {
    ...none('tr:WD-prov-dm-20111018', 'tr:WD-prov-dm-20111215', 'pr:rec-advance'),
    ...none('ar1:0004', 'ar2:0141', 'ar3:0111'),
  },
  activity: none('ex:act1', 'ex:act2'),
  agent: { 'w3:Consortium': { 'prov:type': 'prov:Organization' } },
  wasGeneratedBy: numbered('g', [
    made('tr:WD-prov-dm-20111018', 'ex:act1'),
    made('tr:WD-prov-dm-20111215', 'ex:act2'),
  ]),
  wasDerivedFrom: numbered('d', [derived('tr:WD-prov-dm-20111215', 'tr:WD-prov-dm-20111018')]),
  used: numbered('u', [
    used('ex:act1', 'ar1:0004'),
    used('ex:act1', 'ar2:0141'),
    used('ex:act2', 'ar3:0111'),
  ]),
  wasAssociatedWith: numbered('a', [
    { ...associated('ex:act1', 'w3:Consortium'), 'prov:plan': 'pr:rec-advance' },
    { ...associated('ex:act2', 'w3:Consortium'), 'prov:plan': 'pr:rec-advance' },
  ]),
};
