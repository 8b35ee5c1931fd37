#!/usr/bin/env python3
"""Makes the reference projects (.sheerlay) from the tables of offsets beside this script.

    python3 make_projects.py            writes the four projects into this folder
    python3 make_projects.py --check    exit 1 if a project on disk differs from what the tables say

Only the standard library is used. The tables themselves are never changed here; their first lines name their sources.

The formula canoe's table was computed, in mm, with xi = x / 2438.4 counted from amidships, from
    keel zk = 28 xi^2 + 472 xi^14, sheer zs = 300 + 60 xi^2 + 140 xi^6, a = 3.3 xi^4, 1/R = (1 - 0.8 xi^2) / 1030,
    B = 458 (1 - 0.955 xi^2), tau = 0.055 (1 - xi^2)^2, c = sqrt(1 + zk'^2);
    section by q >= 0: z = zk + c (a q + q^2 / (2 R)), y = q / (1 + (q/B)^4)^(1/4) (1 - tau (z/300)^3).
"""

import csv
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent
LENGTH_FT = 16      # formula canoe, stem head to stem head: 2 x 2438.4 mm


def rows_of(name):
    lines = [l for l in (HERE / name).read_text(encoding="utf-8").splitlines() if not l.startswith("#")]
    return list(csv.DictReader(lines))


def sixteenths(token):
    """'1-3-4+' -> 16ths of an inch."""
    tail = {"+": 1, "-": -1}.get(token[-1], 0)
    feet, inches, eighths = (int(p) for p in (token[:-1] if tail else token).split("-"))
    return 192 * feet + 16 * inches + 2 * eighths + tail


def fie(n):
    """16ths of an inch -> '1-3-4+'; n >= 0."""
    return f"{n // 192}-{n % 192 // 16}-{n % 16 // 2}" + ("+" if n % 2 else "")


def inches(n):
    return fie(16 * n)


def point(first, a, second, b):
    return f'{{ {first} = "{a}", {second} = "{b}" }}'


def array(name, items):
    if not items:
        return []
    return [f"{name} = ["] + [f"    {i}," for i in items] + ["]"]


def strips(cover):
    return ["[strips]", "thickness = 6.35", "width = 19.05", f"cover-width = {cover}", 'wood = "western-redcedar"', ""]


def formula_station(x, cells):
    out = ["[[hull.station]]", f'x = "{fie(x)}"']
    value = {(c["kind"], c["line"]): c["value_fie"] for c in cells}
    out.append("sheer = " + point("height", value["height", "sheer"], "half-breadth", value["halfbreadth", "sheer"]))
    out.append(f'keel = {{ height = "{value["height", "keel"]}" }}')
    waterlines = [(int(c["line"][2:]), c["value_fie"]) for c in cells if c["line"].startswith("WL")]
    buttocks = [(int(c["line"][3:]), c["value_fie"]) for c in cells if c["line"].startswith("BUT")]
    out += array("waterlines", [point("height", inches(n), "half-breadth", v) for n, v in waterlines])
    out += array("buttocks", [point("half-breadth", inches(n), "height", v) for n, v in buttocks])
    return out + [""]


def formula_canoe(start, remark):
    table = rows_of("formula_canoe_offsets.csv")
    out = [
        "# Made by tests/reference/make_projects.py from formula_canoe_offsets.csv; change the script, not this file.",
        "# Source: an invented hull computed from a formula (see make_projects.py), its table rounded to 1/16 in.",
        f"# {remark}",
        "# Mirrored fore and aft; x runs from the bow's stem head, half-length 2438.4 mm = 8 ft. Waterlines and",
        "# buttocks lie at whole inches. Where tumblehome makes a buttock cross the section twice, the table has the lower.",
        "",
        "format = 1", 'name = "Formula canoe"', 'units = "mm"', "",
        "[hull]", 'drawn-to = "moulds"', 'rounded-to = "1/16 in"', "",
        "[hull.profile]",
    ]
    length = 192 * LENGTH_FT
    stem = [(16 * int(r["line"][2:]), sixteenths(r["value_fie"])) for r in table if r["line"].startswith("WL") and r["station"] == "stem"]
    head = next(sixteenths(r["value_fie"]) for r in table if r["line"] == "head")
    profile = [(0, head)] + [(aft, z) for z, aft in sorted(stem, reverse=True)]
    profile += [(length - x, z) for x, z in reversed(profile)]
    out += array("points", [f'["{fie(x)}", "{fie(z)}"]' for x, z in profile]) + [""]
    by_station = {}
    for r in table:
        if r["station"] != "stem":
            by_station.setdefault(sixteenths(r["x_fie"]), []).append(r)
    for x in sorted({s * k for k in by_station for s in (-1, 1)}):
        out += formula_station(length // 2 + x, by_station[abs(x)])
    out += strips("17.0") + ["[planking]", 'lay-on = "moulds"', f"start = {start}", ""]
    return "\n".join(out)


def stephens(corrected):
    table = rows_of("stephens_american_cruising_canoe_fie.csv")
    wanted = {(r["station"], r["column"]): (r["printed"], r["suggested"]) for r in rows_of("corrections_suggested.csv")} if corrected else {}
    out = [
        "# Made by tests/reference/make_projects.py from stephens_american_cruising_canoe_fie.csv" + (" and corrections_suggested.csv" if corrected else "") + "; change the script, not this file.",
        "# Source: W. P. Stephens, Canoe and Boat Building: A Complete Manual for Amateurs, Forest and Stream Publishing Co.,",
        "# New York, 1885 (4th ed. 1889), Plate XI, table of offsets. Public domain. Seen in a transcription; see the CSV's first lines.",
        "# Four cells are suspicious: " + ("replaced by the values of corrections_suggested.csv, which come from neighbours, not from the book." if corrected else "left as printed."),
        "# Ours, not the book's: stations 12 in apart (deduced), drawn to the moulds, half sidings of 1/4 in (keel) and 1/8 in",
        "# (stems), rabbet height 0 where the book has dots between zeros (stations 5 to 10).",
        "",
        "format = 1", f'name = "Canoe of 1889, {"corrected" if corrected else "as printed"}"', 'units = "mm"', "",
        "[hull]", 'drawn-to = "moulds"', 'rounded-to = "1/8 in"', "",
        "[hull.profile]", 'half-siding = "1/4 in"',
    ]
    heads = [(r["x_in"], r["deck_height"]) for r in (table[0], table[-1])]
    out += array("points", [f'["{inches(int(x))}", "{z}", "1/8 in"]' for x, z in heads]) + [""]
    for r in table:
        cell = {k: v.rstrip("?") for k, v in r.items()}
        for column in cell:
            if (r["station"], column) in wanted:
                printed, suggested = wanted[r["station"], column]
                assert printed == cell[column], (r["station"], column)
                cell[column] = suggested
        out += ["[[hull.station]]", f'x = "{inches(int(cell["x_in"]))}"      # station {r["station"]}']
        out.append("sheer = " + point("height", cell["deck_height"], "half-breadth", cell["hb_deck"]))
        if r is not table[0] and r is not table[-1]:
            out.append(f'keel = {{ height = "{cell["rabbet_height"] or "0-0-0"}" }}')
        out += array("waterlines", [point("height", inches(n), "half-breadth", cell[f"hb_wl{n}"]) for n in (6, 4, 2) if cell[f"hb_wl{n}"]])
        out.append("")
    return "\n".join(out + strips("15.875"))


def projects():
    return {
        "formula_canoe.sheerlay": formula_canoe('{ line = "sheer" }', "Planking starts at the sheer."),
        "formula_canoe_geodesic.sheerlay": formula_canoe(
            '{ line = "geodesic", girth = 0 }', "Planking starts on the geodesic that touches the sheer amidships."),
        "stephens_1889_as_printed.sheerlay": stephens(False),
        "stephens_1889_corrected.sheerlay": stephens(True),
    }


def main():
    stale = []
    for name, text in projects().items():
        path = HERE / name
        if sys.argv[1:] == ["--check"]:
            if not path.exists() or path.read_text(encoding="utf-8") != text:
                stale.append(name)
        else:
            path.write_text(text, encoding="utf-8")
    if stale:
        print("differs from its table:", ", ".join(stale))
    return 1 if stale else 0


if __name__ == "__main__":
    sys.exit(main())
