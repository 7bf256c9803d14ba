/**
 * Which accessories move together: whatever is housed, step by step, in one outermost housing is
 * one unit, named by that housing. A circle of housings is one unit, named by its lowest id.
 * @param housedIn from every accessory to what it is housed in; null when it stands by itself.
 */
export function housingUnits(
  housedIn: ReadonlyMap<string, string | null>,
): ReadonlyMap<string, string> {
  const units = new Map<string, string>();
  for (const accessoryId of housedIn.keys()) {
    const path: string[] = [];
    let at = accessoryId;
    while (!units.has(at) && !path.includes(at)) {
      path.push(at);
      const outer = housedIn.get(at) ?? null;
      if (outer === null) break;
      at = outer;
    }
    const circle = path.includes(at) ? path.slice(path.indexOf(at)).sort() : [at];
    const unit = units.get(at) ?? circle[0] ?? at;
    for (const id of path) units.set(id, unit);
  }
  return units;
}
