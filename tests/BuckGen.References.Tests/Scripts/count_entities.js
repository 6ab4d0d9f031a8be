// Counts what dxf-parser finds in DXF files. Prints one JSON object: file -> entity type -> count.
const fs = require('fs');
console.log = console.warn = () => {}; // dxf-parser complains on standard output
const DxfParser = require('dxf-parser');

const counts = {};
for (const file of process.argv.slice(2)) {
  counts[file] = {};
  for (const entity of new DxfParser().parseSync(fs.readFileSync(file, 'utf8')).entities)
    counts[file][entity.type] = (counts[file][entity.type] ?? 0) + 1;
}
process.stdout.write(`${JSON.stringify(counts)}\n`);
