/** What is used of a package without types. */
declare module 'resistor-data' {
  const resistorData: { bandsToNotation(bands: readonly string[]): [string, number] };
  export = resistorData;
}
