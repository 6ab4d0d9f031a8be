// Ten round offsets of the ring in a file (x and y in turn), 12 mm layers at 5 degrees; prints the milliseconds they take.
const { readFileSync } = require('fs');
const { performance } = require('perf_hooks');

require('clipper2-wasm/dist/umd/clipper2z.js')().then(clipper => {
  const paths = new clipper.PathsD();
  paths.push_back(clipper.MakePathD(readFileSync(process.argv[2], 'utf8').trim().split(/\s+/).map(Number)));
  const step = 12 * Math.tan(5 * Math.PI / 180);
  const tenOffsets = () => {
    const start = performance.now();
    for (let layer = 1; layer <= 10; layer++)
      clipper.InflatePathsD(paths, layer * step, clipper.JoinType.Round, clipper.EndType.Polygon, 2, 4, 0.01).delete();
    return performance.now() - start;
  };
  // The first turns are compiling.
  tenOffsets();
  console.log(tenOffsets());
});
