"""Every strip's outline on its cut sheet, measured through poppler by the factors printed beside it, against plan.json.

usage: cut_sheets_on_paper_test.py PROGRAM PROJECT
"""
import math
import re
import sys
import tempfile
from pathlib import Path

from patterns_test import drawn
from strips_on_paper_test import height, words_of, written

TOLERANCE = 0.2     # mm of a strip's width, issue 6
ALONG = 0.5         # mm of its length: drawn 30 times smaller, it is a sixtieth of a millimetre on paper
FACTORS = re.compile(r"Drawn 1:([0-9.]+), the width ([0-9.]+) times wider")
NAME = re.compile(r"[SPC]-?\d+(?:\.\d+)?")


def middle_of(strip):
    """The middle of the flat outline as (u, s): along its chord, and along itself."""
    split = len(strip["upper_edge"])
    upper, lower = strip["outline"][:split], strip["outline"][split:][::-1]
    def across(edge, u):
        for a, b in zip(edge, edge[1:]):
            if a[0] <= u <= b[0] and a[0] < b[0]:
                return a[1] + (u - a[0]) / (b[0] - a[0]) * (b[1] - a[1])
        return edge[0][1] if u < edge[0][0] else edge[-1][1]   # past a slanted end
    last = strip["outline"][split - 1][0] / 2 + strip["outline"][split][0] / 2
    line, s, before = [], 0.0, None
    for i in range(401):
        u = last * i / 400
        v = (across(upper, u) + across(lower, u)) / 2
        s += math.dist(before, (u, v)) if before else 0.0
        before = (u, v)
        line.append((u, s))
    return line


def lookup(line, value, by):
    for a, b in zip(line, line[1:]):
        if a[by] <= value <= b[by]:
            return a[1 - by] + (value - a[by]) / max(1e-9, b[by] - a[by]) * (b[1 - by] - a[1 - by])
    return line[-1][1 - by] if value > line[-1][by] else line[0][1 - by]


def feet(strip):
    """Where the corners, round from the bow end of the upper edge, stand along the chord once their half widths are
    taken off square to the strip."""
    split, ends = len(strip["upper_edge"]), []
    told = [(u, -v if strip["side"] == "port" else v) for u, v in strip["outline"]]   # port is told mirrored
    for corner, beside, half in ((0, 1, -0.5), (split - 1, split - 2, -0.5), (split, split + 1, 0.5), (-1, -2, 0.5)):
        (u, v), (u1, v1) = told[corner], told[beside]
        width = strip["widths"][0 if corner in (0, -1) else -1][1]
        ends.append(u + half * width * (v1 - v) / (u1 - u))   # slopes are small: the sine is the tangent
    return ends


def check_strip(strip, outline, reduced, wider):
    """@return worst errors of width and of length from tip to tip, mm at full size"""
    tips, flat, worst = feet(strip), middle_of(strip), 0.0
    left, right = min(x for x, _ in outline), max(x for x, _ in outline)
    for s, width in strip["widths"]:
        # both edges run there: the middle ends about half way along the cut, which may be hollow
        if abs(tips[0] - tips[3]) * 0.6 + 1 < s < strip["length"] - abs(tips[1] - tips[2]) * 0.6 - 1:
            x = left + (lookup(flat, s, 1) - min(tips)) / reduced
            worst = max(worst, abs(height([outline], x) * reduced / wider - width))
    return worst, abs((right - left) * reduced - (max(tips) - min(tips)))


def main(program, project):
    with tempfile.TemporaryDirectory() as name:
        out = Path(name)
        strips = written(program, project, "sheets", out)
        pdf, width, length, seen = out / "cut-sheets.pdf", 0.0, 0.0, set()
        for page, words in enumerate(words_of(pdf), 1):
            factors = FACTORS.search(words)
            if not factors:
                continue   # the cover, or a sheet gone on with
            names = NAME.findall(words.lstrip().split("\n")[0])
            lines = [points for stroke, points in drawn(pdf, page) if stroke > 0 and len(points) > 5]
            outline = max((line for line in lines if line[0] == line[-1]), key=len)
            for strip in names:
                across, along = check_strip(strips[strip], outline, float(factors[1]), float(factors[2]))
                assert across <= TOLERANCE, f"{strip}: {across:.3f} mm off in width"
                assert along <= ALONG, f"{strip}: {along:.3f} mm off in length"
                width, length = max(width, across), max(length, along)
                seen.add(strip)
        assert seen == set(strips), f"no sheet for {sorted(set(strips) - seen)}"
        print(f"{len(seen)} strips on their cut sheets: widths within {width:.3f} mm of plan.json, lengths within {length:.3f} mm")


if __name__ == "__main__":
    main(*sys.argv[1:])
