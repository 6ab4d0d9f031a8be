// Holds GLB files against the glTF specification. Prints one JSON object a file: file, faults, triangles, vertices.
const fs = require('fs');
const validator = require('gltf-validator');

(async () => {
  for (const file of process.argv.slice(2)) {
    const report = await validator.validateBytes(new Uint8Array(fs.readFileSync(file)));
    const faults = report.issues.messages.filter(m => m.severity <= 1).map(m => `${m.code} ${m.pointer ?? ''}: ${m.message}`);
    process.stdout.write(`${JSON.stringify({ file, faults, triangles: report.info.totalTriangleCount, vertices: report.info.totalVertexCount })}\n`);
  }
})();
