"""The script a user would write: plain drafted layers of an outline, one DXF a layer.

Usage: plain_layers.py RINGS FOLDER DEPTH BOARD DRAFT; a ring a line, x and y in turn; rings in rings are holes.
"""
import math
import os
import sys

import ezdxf
from shapely.geometry import Polygon

rings, folder = sys.argv[1:3]
depth, board, draft = map(float, sys.argv[3:])
shape = Polygon()
for line in open(rings):
    numbers = [float(n) for n in line.split()]
    shape = shape.symmetric_difference(Polygon(list(zip(numbers[::2], numbers[1::2]))))
os.makedirs(folder, exist_ok=True)
for layer in range(round(depth / board)):
    distance = layer * board * math.tan(math.radians(draft))
    quarter = math.ceil(math.pi / 4 / math.acos(1 - 0.01 / distance)) if distance > 0 else 1
    moved = shape.buffer(distance, quarter)
    drawing = ezdxf.new("R2000", units=4)
    for polygon in getattr(moved, "geoms", [moved]):
        for ring in [polygon.exterior, *polygon.interiors]:
            drawing.modelspace().add_lwpolyline(list(ring.coords)[:-1], close=True)
    drawing.saveas(os.path.join(folder, f"layer-{layer + 1:02d}.dxf"))
