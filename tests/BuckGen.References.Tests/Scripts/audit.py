"""ezdxf's verdict on DXF files: strict loading, then its audit. Prints one JSON object a file."""
import json
import sys

import ezdxf

for file in sys.argv[1:]:
    try:
        document = ezdxf.readfile(file)
        audit = document.audit()
        faults = [str(e.message) for e in [*audit.errors, *audit.fixes]]
        print(json.dumps({"file": file, "version": document.dxfversion, "entities": len(document.modelspace()), "faults": faults}))
    except Exception as problem:
        print(json.dumps({"file": file, "version": "", "entities": 0, "faults": [repr(problem)]}))
