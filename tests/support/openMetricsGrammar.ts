/** A family as read back from the text format. */
export interface ReadFamily {
  type: string;
  unit: string | null;
  help: string | null;
  samples: { name: string; labels: Record<string, string>; value: number }[];
}

// The ABNF of OpenMetrics 1.0.0 (2020-11-27), “Text format”, read from the specification's text:
// https://github.com/prometheus/OpenMetrics, specification/OpenMetrics.md.
const metricName = '[a-zA-Z_:][a-zA-Z0-9_:]*';
const labelName = '[a-zA-Z_][a-zA-Z0-9_]*';
const escapedString = String.raw`(?:[^\n"\\]|\\["n\\])*`;
const realNumber = String.raw`[+-]?(?:\d+(?:\.\d*)?|\d*\.\d+)(?:[eE][+-]?\d+)?`;
const label = `(${labelName})="(${escapedString})"`;
const descriptor = new RegExp(`^# (TYPE|HELP|UNIT) (${metricName}) (${escapedString})$`);
const sample = new RegExp(
  `^(${metricName})(?:\\{((?:${label}(?:,${label})*)?)\\})? (${realNumber})(?: ${realNumber})?$`,
);
const suffixOf: Record<string, string> = { gauge: '', counter: '_total', info: '_info' };

/**
 * Reads an exposition strictly.
 * @throws Error that names the line where the grammar or a MUST of the specification is broken.
 */
export function readOpenMetrics(text: string): Map<string, ReadFamily> {
  if (!text.endsWith('# EOF\n') && !text.endsWith('# EOF')) throw new Error('no # EOF at the end');
  const lines = text.replace(/# EOF\n?$/, '').split('\n');
  if (lines.pop() !== '') throw new Error('# EOF does not begin a line');
  const families = new Map<string, ReadFamily>();
  let current: string | null = null;
  for (const line of lines) {
    const [, keyword, name, rest = ''] = descriptor.exec(line) ?? [];
    if (keyword !== undefined && name !== undefined) {
      if (name !== current && families.has(name)) throw new Error(`${name} is torn apart: ${line}`);
      const family = families.get(name) ?? { type: 'unknown', unit: null, help: null, samples: [] };
      if (family.samples.length > 0) throw new Error(`described after its samples: ${line}`);
      families.set(name, describedBy(family, keyword, rest, line));
      current = name;
      continue;
    }
    const family = current === null ? undefined : families.get(current);
    const found = sample.exec(line);
    if (!found || !family || current === null)
      throw new Error(`neither sample nor descriptor: ${line}`);
    addSample(family, current, found, line);
  }
  for (const [name, family] of families) checkFamily(name, family);
  return families;
}

function describedBy(family: ReadFamily, keyword: string, rest: string, line: string): ReadFamily {
  const field = { TYPE: 'type', HELP: 'help', UNIT: 'unit' }[keyword] as 'type' | 'help' | 'unit';
  const isAgain = field === 'type' ? family.type !== 'unknown' : family[field] !== null;
  if (isAgain) throw new Error(`said twice: ${line}`);
  return { ...family, [field]: rest };
}

function addSample(family: ReadFamily, familyName: string, found: RegExpExecArray, line: string) {
  const [, name = '', labelText = ''] = found;
  const value = Number(line.slice(line.lastIndexOf(' ') + 1));
  const labels: Record<string, string> = {};
  for (const [, key = '', text = ''] of labelText.matchAll(new RegExp(label, 'g'))) {
    if (key in labels) throw new Error(`label twice: ${line}`);
    labels[key] = text.replaceAll(/\\(["n\\])/g, (_all, sign) =>
      sign === 'n' ? '\n' : String(sign),
    );
  }
  if (name !== `${familyName}${suffixOf[family.type] ?? '?'}`)
    throw new Error(`wrong suffix: ${line}`);
  const key = (one: Record<string, string>) => JSON.stringify(Object.entries(one).sort());
  if (family.samples.some((other) => key(other.labels) === key(labels))) {
    throw new Error(`the same labels twice: ${line}`);
  }
  family.samples.push({ name, labels, value });
}

function checkFamily(name: string, { type, unit, samples }: ReadFamily): void {
  if (!(type in suffixOf)) throw new Error(`${name} has no known type`);
  if (unit !== null && !name.endsWith(`_${unit}`))
    throw new Error(`${name} does not end in its unit`);
  if (type === 'info' && (unit !== null || samples.some(({ value }) => value !== 1))) {
    throw new Error(`${name}: an info has no unit and the value 1`);
  }
  if (type === 'counter' && samples.some(({ value }) => value < 0)) {
    throw new Error(`${name}: a counter is not below 0`);
  }
}
