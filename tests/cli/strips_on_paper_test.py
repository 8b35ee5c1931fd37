"""The pointed strips of an example on paper, measured through poppler, against plan.json.

usage: strips_on_paper_test.py PROGRAM PROJECT
"""
import json
import math
import re
import subprocess
import sys
import tempfile
from pathlib import Path

from patterns_test import drawn

TOLERANCE = 0.2   # mm, issue 6
HEAD = re.compile(r"([SC]-?\d+(?:\.\d+)?)\b[^,]*(, (?:bow|stern) end)?, marks from the (bow|stern) end")


def cut_lines(pdf, page):
    """What is to be cut on a page: the lines drawn widest."""
    lines = drawn(pdf, page)
    widest = max(width for width, _ in lines)
    return [points for width, points in lines if width > widest - 1e-6 and len(points) > 1]


def bands(lines):
    """The lines of each strip, from the top of the page down: strips lie well apart."""
    groups = []
    for low, high, line in sorted((min(y for _, y in line), max(y for _, y in line), line) for line in lines):
        if groups and low < groups[-1][0] + 5:
            groups[-1] = (max(groups[-1][0], high), groups[-1][1] + [line])
        else:
            groups.append((high, [line]))
    return [lines for _, lines in groups]


def height(lines, x):
    """How far the lines reach across at x."""
    ys = [a[1] + (x - a[0]) / (b[0] - a[0]) * (b[1] - a[1])
          for line in lines for a, b in zip(line, line[1:]) if (a[0] - x) * (b[0] - x) <= 0 and a[0] != b[0]]
    return max(ys) - min(ys)


def width_at(widths, s):
    for (s0, w0), (s1, w1) in zip(widths, widths[1:]):
        if s0 <= s <= s1:
            return w0 + (w1 - w0) * (s - s0) / max(1e-9, s1 - s0)
    raise AssertionError(f"{s} mm lies beyond the strip")


def check_end(strip, end, lines):
    """A pointed end: its cut as long as in the plan, and the width behind it. The worst error, mm."""
    upper, outline = len(strip["upper_edge"]), strip["outline"]
    corners = (outline[0], outline[-1]) if end == "bow" else (outline[upper - 1], outline[upper])
    left, right = min(x for l in lines for x, _ in l), max(x for l in lines for x, _ in l)
    across = [(a, b) for line in lines for a, b in zip(line, line[1:])
              if abs(a[1] - b[1]) > 0.5 * max(w for _, w in strip["widths"])]
    assert len(across) == 1, f"{strip['id']}: {len(across)} lines across"
    a, b = across[0]
    worst = abs(math.dist(a, b) - math.dist(*corners))
    for back in (5, 25, 45):   # behind the cut both edges run
        reach = abs(a[0] - b[0])
        x = left + reach + back if end == "bow" else right - reach - back
        s = reach / 2 + back   # the middle ends half way along the cut
        wanted = width_at(strip["widths"], s if end == "bow" else strip["length"] - s)
        worst = max(worst, abs(height(lines, x) - wanted))
    return worst


def check_whole(strip, lines):
    """A strip shown whole: its width wherever the plan tells one. The worst error, mm, once laid to the marks."""
    left, right = min(x for l in lines for x, _ in l), max(x for l in lines for x, _ in l)
    told = [(s, w) for s, w in strip["widths"] if 0.05 < s / strip["length"] < 0.95]
    start = (left + right - strip["length"]) / 2   # of the middle, as far as its ends are alike
    return min(max(abs(height(lines, start + shift / 4 + s) - w) for s, w in told) for shift in range(-40, 41))


def written(program, project, command, out):
    """Writes what a command puts on A4. The plan's strips by their names."""
    for arguments in (["plan", project, "--json", out / "plan.json"], [command, project, "--out", out, "--page", "A4"]):
        done = subprocess.run([program, *arguments], capture_output=True, text=True)
        assert done.returncode == 0, done.stderr
    return {strip["id"]: strip for strip in json.loads((out / "plan.json").read_text())["strips"]}


def words_of(pdf):
    """The words of a PDF, page by page."""
    done = subprocess.run(["pdftotext", "-layout", pdf, "-"], check=True, capture_output=True, text=True)
    return done.stdout.split("\f")[:-1]


def main(program, project):
    with tempfile.TemporaryDirectory() as name:
        out = Path(name)
        strips = written(program, project, "patterns", out)
        pdf, worst, count, page = out / "strips-roll.pdf", 0.0, 0, 0
        for page, words in enumerate(words_of(pdf), 1):
            heads = HEAD.findall(words)
            found = bands(cut_lines(pdf, page))
            assert len(heads) == len(found) > 0, f"page {page}: {len(heads)} names, {len(found)} strips"
            for (strip, part, end), lines in zip(heads, found):
                error = check_end(strips[strip], end, lines) if part else check_whole(strips[strip], lines)
                assert error <= TOLERANCE, f"{strip}{part}: {error:.3f} mm off"
                worst, count = max(worst, error), count + 1
        assert count > 5
        print(f"{count} pointed strips and ends on paper within {worst:.4f} mm of plan.json")


if __name__ == "__main__":
    main(*sys.argv[1:])
