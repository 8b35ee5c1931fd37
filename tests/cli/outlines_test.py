"""Half sections from DXF and SVG, end to end: drawn by another program (ezdxf) from formulas, read back by ours.

outlines_test.py PROGRAM"""
import math
import pathlib
import subprocess
import sys
import tempfile
import tomllib
import unittest

import ezdxf

PROGRAM = ""
# An invented double-ender of 4.2 m: half-breadth at height z of station x is B(x) (z / D)^(1/2), sheer at height D.
LENGTH, BEAM, DEPTH = 4200.0, 800.0, 300.0
STATIONS = [100.0, 700.0, 1400.0, 2100.0, 2800.0, 3500.0, 4100.0]


def half_beam(x):
    return BEAM / 2 * (1 - (2 * x / LENGTH - 1) ** 2) + 4


def section(x, count=60):
    """Points from keel to sheer, on the formula."""
    return [(half_beam(x) * t, DEPTH * t * t) for t in (i / (count - 1) for i in range(count))]


class Drawings(unittest.TestCase):
    def setUp(self):
        holder = tempfile.TemporaryDirectory()
        self.addCleanup(holder.cleanup)
        self.folder = pathlib.Path(holder.name)

    def call(self, *arguments, code=0):
        done = subprocess.run([PROGRAM, *map(str, arguments)], capture_output=True, text=True, timeout=120)
        self.assertEqual(done.returncode, code, done.stderr)
        return done

    def check(self, drawing, tolerance, *takes):
        """Every point of the project lies on the formula's section, measured along the half-breadth."""
        out = self.folder / "boat.sheerlay"
        said = [word for take in takes for word in ("--take", take)]
        self.call("new", "Trial", "--sections", drawing, *said, "--out", out)
        project = tomllib.loads(out.read_text())
        hull, unit = project["hull"], {"mm": 1.0, "in": 25.4}[project["units"]]
        rounding = unit * {"mm": 0.5e-3, "in": 0.5e-4}[project["units"]]    # of both numbers in the file
        self.assertEqual([round(s["x"] * unit) for s in hull["station"]], [round(x) for x in STATIONS])
        for x, station in zip(STATIONS, hull["station"]):
            points = [station["sheer"], station["keel"], *station["points"]]
            self.assertGreater(len(points), 15)
            for p in points:
                height = max(p["height"], 0.0) * unit
                wanted = half_beam(x) * math.sqrt(height / DEPTH)
                slope = half_beam(x) / (2 * math.sqrt(max(height, rounding) * DEPTH))
                self.assertAlmostEqual(p.get("half-breadth", 0.0) * unit, wanted,
                                       delta=tolerance + rounding * (1 + slope))
            sheer = station["sheer"]
            self.assertAlmostEqual(sheer["half-breadth"] * unit, half_beam(x), delta=tolerance + rounding)
            self.assertAlmostEqual(sheer["height"] * unit, DEPTH, delta=tolerance + rounding)
        return out

    def dxf(self, add, unit=4, more=lambda document: None):
        document = ezdxf.new("R2010")
        document.header["$INSUNITS"] = unit
        space = document.modelspace()
        for x in STATIONS:
            document.layers.add("X-%dMM" % x)
            add(space, x, {"layer": "X-%dMM" % x})
        space.add_text("an invented boat")
        more(document)
        path = self.folder / "sections.dxf"
        document.saveas(path)
        return path

    def test_polylines(self):
        out = self.check(self.dxf(lambda space, x, to: space.add_lwpolyline(section(x), dxfattribs=to)), 1e-3)
        self.call("plan", out)

    def test_hidden_layers(self):
        def more(document):   # what a drawing program leaves behind when it hides a layer
            document.layers.add("X-300MM").off()
            document.layers.add("X-900MM").freeze()
            for name in ("X-300MM", "X-900MM"):
                document.modelspace().add_line((0, 0), (5, 5), dxfattribs={"layer": name})
        self.check(self.dxf(lambda space, x, to: space.add_lwpolyline(section(x), dxfattribs=to), more=more), 1e-3)

    def test_old_polylines_and_pieces(self):
        def add(space, x, to):
            points = section(x)
            space.add_polyline2d(points[:30], dxfattribs=to)
            space.add_polyline2d(points[29:][::-1], dxfattribs=to)
        self.check(self.dxf(add), 1e-3)

    def test_splines(self):
        # The section is a parabola, (B t, D t^2): one quadratic Bezier curve, raised to degree 3.
        def add(space, x, to):
            b = half_beam(x)
            spline = space.add_open_spline([(0, 0), (b / 3, 0), (2 * b / 3, DEPTH / 3), (b, DEPTH)], degree=3, dxfattribs=to)
            self.assertEqual(len(spline.knots), 8)
        self.check(self.dxf(add), 1e-3)

    def test_splines_through_points(self):
        # Only the points it was drawn through are used; they are on the formula.
        self.check(self.dxf(lambda space, x, to: space.add_spline(section(x, 25), dxfattribs=to)), 1e-3)

    def test_inches_are_found_by_the_beam(self):
        def add(space, x, to):
            space.add_lwpolyline([(y / 25.4, z / 25.4) for y, z in section(x)], dxfattribs=to)
        drawing = self.dxf(add, unit=0)
        self.check(drawing, 1e-3, "beam = 808 mm")
        refused = self.call("new", "Trial", "--sections", drawing, "--out", self.folder / "no.sheerlay", code=1)
        self.assertIn("beam", refused.stderr)
        self.assertFalse((self.folder / "no.sheerlay").exists())

    def test_svg(self):
        groups = "".join('<g id="st_%dmm"><path d="M300 400 Q %f 400 %f %f"/></g>' %
                         (x, 300 + half_beam(x) / 4, 300 + half_beam(x) / 2, 400 - DEPTH / 2) for x in STATIONS)
        drawing = self.folder / "sections.svg"
        drawing.write_text('<svg xmlns="http://www.w3.org/2000/svg" width="1200mm" viewBox="0 0 600 500">%s</svg>' % groups)
        self.check(drawing, 1e-3)   # drawn at half size, the width says so


if __name__ == "__main__":
    PROGRAM = sys.argv.pop(1)
    unittest.main(verbosity=2)
