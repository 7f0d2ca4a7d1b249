#!/usr/bin/env python3
"""Makes the STL files of this folder anew. Both parts are invented by us and stand for no product or person.

usage: make_meshes.py [FOLDER]     (left out: the folder of this script)

printed-distal.stl  the demo finger's last phalanx as a printed part: a plate 13 mm thick, rounded at both ends, with the
                    pin's hole; in the body's frame, origin on the pin, in mm
oval-grip.stl       a thing to hold: 80 mm long, oval, thicker in the middle; axis along z, in mm
"""
import math
import struct
import sys
from pathlib import Path


def quad(mesh, a, b, c, d):
    mesh += [(a, b, c), (a, c, d)]


def prism(outline, hole, low, high):
    """A plate between z = low and high with an outline and a hole of as many corners, both counter-clockwise."""
    mesh = []
    n = len(outline)
    for i in range(n):
        j = (i + 1) % n
        for z, flip in ((high, False), (low, True)):
            ring = [(*outline[i], z), (*outline[j], z), (*hole[j], z), (*hole[i], z)]
            quad(mesh, *(reversed(ring) if flip else ring))
        quad(mesh, (*outline[i], low), (*outline[j], low), (*outline[j], high), (*outline[i], high))
        quad(mesh, (*hole[j], low), (*hole[i], low), (*hole[i], high), (*hole[j], high))
    return mesh


def rounded_bar(length, radius_at_pin, radius_at_tip, corners):
    """Outline of two circles and their common tangents, one corner on each ray from the pin."""
    slope = math.asin((radius_at_pin - radius_at_tip) / length)
    outline = []
    for k in range(corners):
        angle = 2 * math.pi * (k + 0.5) / corners
        # The ray leaves the shape where it leaves the circle at the tip, the tangents or the circle at the pin.
        low, high = 0.0, length + radius_at_tip
        for _ in range(60):
            r = (low + high) / 2
            x, y = r * math.cos(angle), abs(r * math.sin(angle))
            along = x * math.cos(slope) - y * math.sin(slope)     # along the tangent from where it leaves the pin's circle
            if along < 0:
                inside = r < radius_at_pin
            elif along < length * math.cos(slope):
                inside = x * math.sin(slope) + y * math.cos(slope) < radius_at_pin
            else:
                inside = math.hypot(x - length, y) < radius_at_tip
            low, high = (r, high) if inside else (low, r)
        outline.append((low * math.cos(angle), low * math.sin(angle)))
    return outline


def printed_distal():
    corners = 48
    outline = rounded_bar(13.0, 4.0, 7.0, corners)
    angles = [2 * math.pi * (k + 0.5) / corners for k in range(corners)]
    hole = [(0.78 * math.cos(a), 0.78 * math.sin(a)) for a in angles]
    return prism(outline, hole, -6.5, 6.5)


def oval_grip():
    rings, corners = 16, 40
    def at(i, k):
        z = -40 + 80 * i / rings
        thick = 1 - 0.2 * (z / 40) ** 2
        angle = 2 * math.pi * k / corners
        return (21 * thick * math.cos(angle), 18 * thick * math.sin(angle), z)
    mesh = []
    for k in range(corners):
        for i in range(rings):
            quad(mesh, at(i, k), at(i, (k + 1) % corners), at(i + 1, (k + 1) % corners), at(i + 1, k))
        mesh.append(((0, 0, -40), at(0, (k + 1) % corners), at(0, k)))
        mesh.append(((0, 0, 40), at(rings, k), at(rings, (k + 1) % corners)))
    return mesh


def write(path, mesh):
    """Binary STL; the normals, which nobody needs, are 0."""
    with open(path, "wb") as file:
        file.write(b"invented for demonstration, made by make_meshes.py".ljust(80))
        file.write(struct.pack("<I", len(mesh)))
        for triangle in mesh:
            file.write(struct.pack("<12fH", 0, 0, 0, *(x for corner in triangle for x in corner), 0))


if __name__ == "__main__":
    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).parent
    write(folder / "printed-distal.stl", printed_distal())
    write(folder / "oval-grip.stl", oval_grip())
