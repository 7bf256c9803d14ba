/** One field of a record: its data, and where its tag begins. */
export interface AdiField {
  readonly value: string;
  /** Characters from the beginning of the text, from 0. */
  readonly offset: number;
}

/** One contact as the log has it: fields by their names in capitals. */
export interface AdiRecord {
  readonly offset: number;
  readonly fields: ReadonlyMap<string, AdiField>;
}

export interface AdiProblem {
  readonly offset: number;
  readonly message: string;
}

export interface AdiText {
  readonly header: ReadonlyMap<string, AdiField>;
  readonly records: readonly AdiRecord[];
  /** What has to be mended before the records can be relied on. */
  readonly problems: readonly AdiProblem[];
  /** The same in the header, and text that belongs to no field: worth a look, and in nobody's way. */
  readonly remarks: readonly AdiProblem[];
}

const tag = /<([^<>:]+)(?::([^<>:]*))?(?::([^<>:]*))?>/g;
const wellFormedTag = /<(?:eo[rh]|[a-z0-9_]+:\d+(?::[a-z])?)>/gi;

/**
 * Reads a log in the ADI form of ADIF (adif.org.uk, version 3): `<name:length>data`, names in any
 * case, a record ended by `<eor>`, a header before `<eoh>` unless the text begins with `<`; what
 * stands between data and the next tag belongs to nothing. A length that reaches over the next tag
 * or the end is told with its offset, and reading goes on at that tag.
 */
export function readAdi(text: string): AdiText {
  const reading = new AdiReading(text);
  const scan = new RegExp(tag);
  const hasHeader = !text.startsWith('<') && /<eoh>/i.test(text);
  reading.isHeader = hasHeader;
  let end = 0;
  for (let found = scan.exec(text); found; found = scan.exec(text)) {
    const [whole, name = '', length] = found;
    if (end > 0) reading.between(end, found.index);
    scan.lastIndex = reading.take(found.index, whole.length, name.trim().toUpperCase(), length);
    end = scan.lastIndex;
  }
  reading.finish(end);
  return reading;
}

class AdiReading implements AdiText {
  readonly header = new Map<string, AdiField>();
  readonly records: AdiRecord[] = [];
  readonly problems: AdiProblem[] = [];
  readonly remarks: AdiProblem[] = [];
  isHeader = false;
  private fields = new Map<string, AdiField>();

  constructor(private readonly text: string) {}

  /** @returns where reading goes on */
  take(offset: number, tagLength: number, name: string, length: string | undefined): number {
    const start = offset + tagLength;
    if (length === undefined && (name === 'EOH' || name === 'EOR')) {
      this.endOf(name, offset);
      return start;
    }
    if (length === undefined || !/^\d+$/.test(length.trim())) {
      const said = length === undefined ? 'no length' : `“${length}” for its length`;
      this.tell(
        offset,
        `${name.slice(0, 60)} has ${said}; a whole number of characters is wanted.`,
      );
      return start;
    }
    const data = this.text.slice(start, start + Number(length));
    const swallowed = this.nextTag(start);
    if (swallowed && swallowed.index < start + data.length) {
      const shown = this.text.slice(start, swallowed.index).trimEnd();
      this.tell(
        offset,
        `${name} says that it is ${length} characters long, and so reaches over ${swallowed[0]}; “${shown.slice(0, 60)}” has ${shown.length}.`,
      );
      this.keep(name, shown, offset);
      return swallowed.index;
    }
    if (data.length < Number(length)) {
      this.tell(
        offset,
        `${name} says that it is ${length} characters long; the text ends after ${data.length}.`,
      );
    }
    this.keep(name, data, offset);
    return start + data.length;
  }

  /** What stands between the data of a field and the next tag. */
  between(from: number, until: number): void {
    const said = this.text.slice(from, until).trim();
    if (said === '' || this.isHeader) return;
    const message = `“${said.slice(0, 60)}” belongs to no field. Is the length before it right?`;
    this.remarks.push({ offset: from, message });
  }

  finish(end: number): void {
    this.between(end, this.text.length);
    const [first] = this.fields.values();
    if (first) this.tell(first.offset, 'The last record is not ended by <eor>.');
  }

  private nextTag(from: number): RegExpExecArray | null {
    const next = new RegExp(wellFormedTag);
    next.lastIndex = from;
    return next.exec(this.text);
  }

  private endOf(name: string, offset: number): void {
    if (name === 'EOH') {
      if (!this.isHeader) this.tell(offset, '<eoh> stands after the header has ended.');
      this.isHeader = false;
      return;
    }
    const [first] = this.fields.values();
    if (first) this.records.push({ offset: first.offset, fields: this.fields });
    this.fields = new Map();
  }

  private keep(name: string, value: string, offset: number): void {
    (this.isHeader ? this.header : this.fields).set(name, { value, offset });
  }

  private tell(offset: number, message: string): void {
    (this.isHeader ? this.remarks : this.problems).push({ offset, message });
  }
}
