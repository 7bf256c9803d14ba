import { Command } from 'commander';
import { addAttach } from './attach.js';
import { addBackup } from './backup.js';
import { addDemo } from './demo.js';
import { addDossier } from './dossier.js';
import { addExport } from './exportCollection.js';
import { addImport } from './importFile.js';
import { addImportLog } from './importLog.js';
import { addInsurance } from './insurance.js';
import { addLoad } from './load.js';
import { addProvenance } from './exportProvenance.js';
import { addRecompute } from './recompute.js';
import { addRedact } from './redact.js';
import { addReports } from './reports.js';
import { addSchema } from './schema.js';
import { addServe } from './serve.js';
import { addSignHead } from './signHead.js';
import { addToken } from './token.js';
import { addVerify } from './verify.js';
import type { Surroundings } from './surroundings.js';

/** The command line: one command a file. */
export function buildProgram(around: Surroundings): Command {
  const program = new Command('reglow')
    .description('The record of a collector who restores vintage radio sets.')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => {
        around.print(text.trimEnd());
      },
      writeErr: (text) => {
        around.say(text.trimEnd());
      },
      outputError: (text, write) => {
        write(text.replace(/^error: /, ''));
      },
    });
  addServe(program, around);
  addImport(program, around);
  addImportLog(program, around);
  addExport(program, around);
  addProvenance(program, around);
  addInsurance(program, around);
  addLoad(program, around);
  addAttach(program, around);
  addDossier(program, around);
  addVerify(program, around);
  addSignHead(program, around);
  addRedact(program, around);
  addBackup(program, around);
  addDemo(program, around);
  addRecompute(program, around);
  addSchema(program, around);
  addReports(program, around);
  addToken(program, around);
  return program;
}
