"""What an example hands to machines and other programs, read from outside: every DXF by ezdxf, glTF and STL by
our reader of the formats' own descriptions.

usage: files_for_machines_test.py PROGRAM PROJECT
"""
import json
import subprocess
import sys
import tempfile
from pathlib import Path

import ezdxf

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "tools"))
import read_solids


def written(program, *arguments):
    done = subprocess.run([program, *arguments], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    return done.stdout


def audit(program, project, out):
    """Every DXF without errors and without fixes. How many there are."""
    files = [Path(line) for line in written(program, "patterns", project, "--out", out).splitlines() if line.endswith(".dxf")]
    assert len(files) > 5
    for dxf in files:
        audited = ezdxf.readfile(dxf).audit()
        assert not audited.errors and not audited.fixes, f"{dxf.name}: {audited.errors} {audited.fixes}"
    return len(files)


def bodies(glb):
    """Every mesh of a glTF file as triangles of points in mm, by its name; the file is in metres."""
    return {name: [tuple(tuple(1000 * c for c in points[i]) for i in t) for t in triangles]
            for name, (points, triangles, _) in read_solids.read_glb(glb.read_bytes()).items()}


def check_solids(program, project, out):
    """glTF structurally sound and every strip and mould of it closed; STL closed, of the same volume. The volumes, mm3."""
    written(program, "export", project, "--out", out)
    strips = {strip["id"] for strip in json.loads(written(program, "plan", project, "--json", "-"))["strips"]}
    boat = bodies(out / "boat.glb")
    assert strips < set(boat) and all(name.startswith(("Mould ", "Stem form ", "Transom ")) for name in set(boat) - strips)
    volumes = {}
    for name, triangles in boat.items():
        read_solids.need_closed(triangles)
        volumes[name] = read_solids.volume(triangles)
        assert volumes[name] > 0, f"{name} faces inward"
    for file, names in (("strips.stl", strips), ("moulds.stl", set(boat) - strips)):
        triangles = read_solids.read_stl((out / file).read_bytes())
        read_solids.need_closed(triangles)
        wanted = sum(volumes[name] for name in names)
        assert abs(read_solids.volume(triangles) / wanted - 1) < 1e-4, file
    hull = read_solids.read_stl((out / "hull.stl").read_bytes())
    read_solids.need_closed(hull)
    assert set(bodies(out / "hull.glb")) == {"Hull starboard", "Hull port"}
    return read_solids.volume(hull)


def main(program, project):
    with tempfile.TemporaryDirectory() as name:
        out = Path(name)
        drawings = audit(program, project, out / "patterns")
        hull = check_solids(program, project, out / "export")
        assert hull > 0
        print(f"{drawings} DXF files without errors or fixes; glTF and STL sound and closed, hull of {hull * 1e-6:.1f} litres")


if __name__ == "__main__":
    main(*sys.argv[1:])
