"""The patterns of an example, measured from outside: the PDF through poppler, the DXF through ezdxf.

usage: patterns_test.py PROGRAM PROJECT
"""
import math
import re
import subprocess
import sys
import tempfile
from pathlib import Path

import ezdxf

TOLERANCE = 0.05  # mm, issue 6
PATH = re.compile(r'<path([^>]*?) d="([^"]*)"([^>]*)')


def drawn(pdf, page):
    """Every polyline of a page in mm, as poppler reads it, with the width it is drawn with (0: filled only)."""
    svg = subprocess.run(["pdftocairo", "-svg", "-f", str(page), "-l", str(page), pdf, "-"],
                         check=True, capture_output=True, text=True).stdout
    lines = []
    for style, data, rest in PATH.findall(svg):
        matrix = re.search(r"matrix\(([^)]*)\)", rest)
        a, b, c, d, e, f = [float(n) for n in re.split("[ ,]+", matrix[1].strip())] if matrix else (1, 0, 0, 1, 0, 0)
        points = [(float(x), float(y)) for x, y in re.findall(r"[ML] ([-0-9.]+) ([-0-9.]+)", data)]
        width = re.search(r"stroke-width:([0-9.]+)", style)
        lines.append((float(width[1]) if width else 0.0,
                      [((a * x + c * y + e) * 25.4 / 72, (b * x + d * y + f) * 25.4 / 72) for x, y in points]))
    return lines


def polylines(pdf, page):
    return [points for _, points in drawn(pdf, page)]


def check_bars(lines, where):
    for length in (100.0, 101.6):
        for axis, name in ((0, "level"), (1, "upright")):
            fits = [l for l in lines if len(l) == 2 and abs(abs(l[1][axis] - l[0][axis]) - length) <= TOLERANCE
                    and abs(l[1][1 - axis] - l[0][1 - axis]) < 0.01]
            assert fits, f"{where}: no {name} bar of {length} mm"


def dxf_outlines(path):
    """Points of every polyline, in the order of the file; the first is on layer cut."""
    pairs = path.read_text().split("\n")
    pairs = list(zip((p.strip() for p in pairs[0::2]), pairs[1::2]))
    lines, points, kind, x = [], [], "", 0.0
    for code, value in pairs:
        if code == "0":
            if value == "SEQEND":
                lines.append(points)
                points = []
            kind = value
        elif kind == "VERTEX" and code == "10":
            x = float(value)
        elif kind == "VERTEX" and code == "20":
            points.append((x, float(value)))
    return lines


def check_spans(pdf, dxfs, first=1):
    """Every outline of a DXF has a line on its page that reaches as far along and across."""
    worst = 0.0
    for page, dxf in enumerate(dxfs, first):
        found = [span(line) for line in polylines(pdf, page) if len(line) > 2]
        for wanted in (span(line) for line in dxf_outlines(dxf) if len(line) > 5):
            worst = max(worst, min(max(abs(a - b) for a, b in zip(wanted, one)) for one in found))
    assert worst <= TOLERANCE, f"{pdf.name}: lines differ by {worst} mm"
    return worst


def span(line):
    """How far a line reaches, along and across."""
    return tuple(max(p[i] for p in line) - min(p[i] for p in line) for i in (0, 1))


def main(program, project):
    with tempfile.TemporaryDirectory() as name:
        out = Path(name)
        done = subprocess.run([program, "patterns", project, "--out", out, "--page", "A4"], capture_output=True, text=True)
        assert done.returncode == 0, done.stderr
        written = [Path(line) for line in done.stdout.splitlines()]
        assert all(path.exists() for path in written)
        dxfs = [p for p in written if p.suffix == ".dxf"]
        assert len(dxfs) > 5
        tiled, roll = out / "moulds-tiled.pdf", out / "moulds-roll.pdf"
        strips = [p for p in dxfs if p.name.startswith("pointed-strips")]
        moulds = [p for p in dxfs if p.name.startswith(("mould-", "stem-form-"))]
        assert strips
        for pdf in (tiled, roll, out / "strips-tiled.pdf", out / "strips-roll.pdf"):
            info = subprocess.run(["pdfinfo", pdf], check=True, capture_output=True, text=True).stdout
            pages = int(re.search(r"Pages: +([0-9]+)", info)[1])
            step = 1 if "roll" in pdf.name else max(1, pages // 12)   # poppler takes its time
            for page in range(1, pages + 1, step):
                check_bars(polylines(pdf, page), f"{pdf.name} page {page}")
        # the roll's outline against the DXF's: where a point of it is nearest on paper, and three distances between
        worst = 0.0
        for page, dxf in enumerate(moulds, 1):
            wanted = dxf_outlines(dxf)[0]
            found = max(polylines(roll, page), key=len)
            left, low = min(x for x, _ in wanted), max(y for _, y in wanted)
            atx, aty = min(x for x, _ in found), min(y for _, y in found)
            onpaper = [(x - left + atx, low - y + aty) for x, y in wanted]
            near = lambda p: min(found, key=lambda q: math.dist(p, q))
            n = len(wanted)
            for i, j in ((0, n - 2), (0, n - 3), (n - 2, n - 4)):   # corners, which stay points on paper
                worst = max(worst, abs(math.dist(wanted[i], wanted[j]) - math.dist(near(onpaper[i]), near(onpaper[j]))))
        assert worst <= TOLERANCE, f"outline distances differ by {worst} mm"
        worst = max(worst, check_spans(out / "strips-roll.pdf", strips))
        transoms = [p for p in dxfs if p.name.startswith("transom-")]
        worst = max(worst, check_spans(roll, transoms, len(moulds) + 1))
        for dxf in dxfs:
            audit = ezdxf.readfile(dxf).audit()
            assert not audit.errors and not audit.fixes, f"{dxf.name}: {audit.errors} {audit.fixes}"
        print(f"{len(dxfs)} patterns, outlines on paper within {worst:.4f} mm of the DXF")


if __name__ == "__main__":
    main(*sys.argv[1:])
