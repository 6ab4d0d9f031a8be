"""What other readers find in outline files. Reads a listing of [{file, source, mmPerUnit}] and the chains of dxf_chains.js;
prints one JSON object a file: {file, area: ezdxf's or librsvg's, chained: dxf-parser's}, null where a reader gives up."""
import json
import sys

import outlines
from regions import enclosed


def area(read):
    try:
        return read().area
    except Exception:  # a reader that gives up is no judge of this file
        return None


if __name__ == "__main__":
    with open(sys.argv[1]) as listing, open(sys.argv[2]) as chained:
        files, chains = json.load(listing), json.load(chained)
    for f in files:
        source, unit = f["source"], f["mmPerUnit"]
        scaled = [[(x * unit, y * unit) for x, y in c] for c in chains.get(source) or []]
        print(json.dumps({
            "file": f["file"],
            "area": area(lambda: outlines.read(source, unit)),
            "chained": area(lambda: enclosed(scaled)) if scaled else None,
        }))
