// Reads DXF outlines with dxf-parser. Prints one JSON object: file -> point chains in drawing units, or null where the file
// holds what this small reader does not flatten.
const fs = require('fs');
console.log = console.warn = () => {}; // dxf-parser complains on standard output
const DxfParser = require('dxf-parser');

const STEP = Math.PI / 360;

function arc(x, y, radius, from, to) {
  const steps = Math.max(1, Math.ceil(Math.abs(to - from) / STEP));
  return Array.from({ length: steps + 1 }, (_, k) => {
    const angle = from + (to - from) * k / steps;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

// The arc between two vertices has an angle of four times the arc tangent of the bulge.
function bulged(a, b) {
  if (!a.bulge) return [[a.x, a.y], [b.x, b.y]];
  const lift = (1 / a.bulge - a.bulge) / 4;
  const x = (a.x + b.x) / 2 - (b.y - a.y) * lift, y = (a.y + b.y) / 2 + (b.x - a.x) * lift;
  const from = Math.atan2(a.y - y, a.x - x);
  return arc(x, y, Math.hypot(a.x - x, a.y - y), from, from + 4 * Math.atan(a.bulge));
}

function chain(e) {
  switch (e.type) {
    case 'LINE': return e.vertices.map(v => [v.x, v.y]);
    case 'CIRCLE': return arc(e.center.x, e.center.y, e.radius, 0, 2 * Math.PI);
    case 'ARC': return arc(e.center.x, e.center.y, e.radius, e.startAngle, e.endAngle > e.startAngle ? e.endAngle : e.endAngle + 2 * Math.PI);
    case 'LWPOLYLINE':
    case 'POLYLINE': {
      const v = e.shape ? [...e.vertices, e.vertices[0]] : e.vertices;
      return v.slice(1).flatMap((end, i) => bulged(v[i], end));
    }
    default: return null;
  }
}

const read = {};
for (const file of process.argv.slice(2)) {
  try {
    const chains = new DxfParser().parseSync(fs.readFileSync(file, 'utf8')).entities.map(chain);
    read[file] = chains.includes(null) ? null : chains;
  } catch {
    read[file] = null;
  }
}
process.stdout.write(`${JSON.stringify(read)}\n`);
