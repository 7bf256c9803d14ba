#!/usr/bin/env node
// Gets a clone ready (packages, then the compiled program) and runs the command it was given.
// Plain JavaScript without dependencies: it is what runs before there are any. Nothing newer than
// Node 14 may be written in this file, so that an old Node can still be told that it is old.
import { refusalOfNode } from './prepare/refusalOfNode.mjs';

const refusal = refusalOfNode(process.versions.node);
if (refusal === null) {
  void import('./prepare/runCommand.mjs').then(({ runCommand }) =>
    runCommand(process.argv.slice(2)),
  );
} else {
  console.error(refusal);
  process.exitCode = 1;
}
