import { Transform, type TransformCallback } from 'node:stream';
import Assembler from 'stream-json/Assembler.js';
import { Refusal } from '../../db/refusal.js';
import { archiveFormat, archiveVersion } from './archiveFormat.js';
import type { ArchivedRow } from './tableRows.js';

export interface TableRow {
  table: string;
  /** Null: the table begins. */
  row: ArchivedRow | null;
}

interface Token {
  name: string;
  value?: string;
}

type Place = 'outside' | 'head' | 'tables' | 'table' | 'end';

/** From the tokens of an archive to its rows, one at a time. @throws Refusal (as stream error). */
export class ArchiveReader extends Transform {
  private place: Place = 'outside';
  private key = '';
  private readonly head = new Map<string, string | undefined>();
  private assembler: Assembler | null = null;

  /** Of the archive, once its head has been read. */
  get version(): number {
    return Number(this.head.get('version'));
  }

  constructor() {
    super({ objectMode: true });
  }

  override _transform(token: Token, _encoding: string, done: TransformCallback): void {
    try {
      this.accept(token);
      done();
    } catch (error) {
      done(error as Error);
    }
  }

  override _flush(done: TransformCallback): void {
    done(this.place === 'end' ? null : Refusal.invalid('This archive ends before its end.'));
  }

  private accept(token: Token): void {
    if (this.assembler) {
      this.assembler.consume(token);
      if (!this.assembler.done) return;
      this.push({ table: this.key, row: this.assembler.current as ArchivedRow });
      this.assembler = null;
      return;
    }
    const step = `${this.place} ${token.name}`;
    switch (step) {
      case 'outside startObject':
        this.place = 'head';
        return;
      case 'head keyValue':
      case 'tables keyValue':
        this.key = token.value ?? '';
        return;
      case 'head stringValue':
      case 'head numberValue':
        this.head.set(this.key, token.value);
        return;
      case 'head startObject':
        this.refuseOthers();
        this.place = 'tables';
        return;
      case 'tables startArray':
        this.place = 'table';
        this.push({ table: this.key, row: null });
        return;
      case 'table startObject':
        this.assembler = new Assembler();
        this.assembler.consume(token);
        return;
      case 'table endArray':
        this.place = 'tables';
        return;
      case 'tables endObject':
        this.place = 'head';
        return;
      case 'head endObject':
        this.place = this.head.has('format') ? 'end' : 'head';
        return;
      default:
        throw Refusal.invalid(notAnArchive);
    }
  }

  private refuseOthers(): void {
    if (this.key !== 'tables' || this.head.get('format') !== archiveFormat) {
      throw Refusal.invalid(notAnArchive);
    }
    const { version } = this;
    if (!Number.isInteger(version) || version < 1) throw Refusal.invalid(notAnArchive);
    if (version > archiveVersion) {
      throw Refusal.invalid(
        `This archive has version ${version}; this Reglow reads up to version ${archiveVersion}. Load it with a newer Reglow.`,
      );
    }
  }
}

const notAnArchive =
  'This is not a Reglow archive as `reglow export --archive` writes it. Nothing was loaded.';
