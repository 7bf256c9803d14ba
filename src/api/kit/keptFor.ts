/**
 * Remembers what was made of a thing under a name, for as long as the thing is there.
 * @returns the kept value, made when it is asked for first.
 */
export function keptFor<Thing extends object, Value>(): (
  thing: Thing,
  name: string,
  make: () => Value,
) => Value {
  const kept = new WeakMap<Thing, Map<string, Value>>();
  return (thing, name, make) => {
    let ofThing = kept.get(thing);
    if (!ofThing) kept.set(thing, (ofThing = new Map<string, Value>()));
    const known = ofThing.get(name);
    if (known !== undefined) return known;
    const made = make();
    ofThing.set(name, made);
    return made;
  };
}
