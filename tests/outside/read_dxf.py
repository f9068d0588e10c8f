"""Reads DXF files with ezdxf and prints what it found, a line of JSON for each: audit, units, owners, and every entity."""
import json
import sys

from ezdxf import recover


def segment(part):
    """A line or arc as its two ends and the middle."""
    if part.dxftype() == "LINE":
        a, b = part.dxf.start, part.dxf.end
        return [[a.x, a.y], [(a.x + b.x) / 2, (a.y + b.y) / 2], [b.x, b.y]]
    turn = (part.dxf.end_angle - part.dxf.start_angle) % 360
    angles = [part.dxf.start_angle, part.dxf.start_angle + turn / 2, part.dxf.start_angle + turn]
    return [[p.x, p.y] for p in part.vertices(angles)]


def entity(e):
    out = {"type": e.dxftype(), "layer": e.dxf.layer, "owner": e.dxf.owner}
    if e.dxftype() == "LWPOLYLINE":
        out["closed"] = e.closed
        out["segments"] = [segment(part) for part in e.virtual_entities()]
    elif e.dxftype() == "POLYLINE":
        out["closed"] = e.is_closed
        out["segments"] = [segment(part) for part in e.virtual_entities()]
    elif e.dxftype() == "LINE":
        out["segments"] = [segment(e)]
    elif e.dxftype() == "CIRCLE":
        out["circle"] = [e.dxf.center.x, e.dxf.center.y, e.dxf.radius]
    elif e.dxftype() == "TEXT":
        out["text"] = e.plain_text()
        out["at"] = [e.dxf.insert.x, e.dxf.insert.y]
        out["height"] = e.dxf.height
        out["rotation"] = e.dxf.rotation
    return out


for path in sys.argv[1:]:
    doc, audit = recover.readfile(path)
    space = doc.modelspace()
    print(json.dumps({
        "errors": [each.message for each in audit.errors],
        "fixes": [each.message for each in audit.fixes],
        "version": doc.dxfversion,
        "units": doc.units,
        "encoding": doc.encoding,
        "extents": [list(doc.header["$EXTMIN"])[:2], list(doc.header["$EXTMAX"])[:2]],
        "space": space.block_record_handle,
        "layers": {layer.dxf.name: [layer.dxf.color, layer.dxf.linetype] for layer in doc.layers},
        "entities": [entity(e) for e in space],
    }))
