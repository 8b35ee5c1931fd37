"""The program as a person or a script meets it: exit codes, streams, files. Python's standard library only.

Run by ctest with SHEERLAY_PROGRAM (the built binary) and SHEERLAY_ROOT (the repository) set; `cli_test.py Plan` runs one class."""
import csv
import json
import os
import pathlib
import re
import shutil
import stat
import subprocess
import sys
import tempfile
import unittest

PROGRAM = os.environ["SHEERLAY_PROGRAM"]
ROOT = pathlib.Path(os.environ["SHEERLAY_ROOT"])
sys.path.insert(0, str(ROOT / "tests" / "tools"))
import read_solids   # noqa: E402 stands beside the plan's checker
EXAMPLE = sorted(ROOT.glob("examples/*/*.sheerlay"))[0]

# What the checks below may rely on: a command never waits for a display or for input.
ENVIRONMENT = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}

FINDING = re.compile(r"(note|caution|stop) [a-z0-9]+(-[a-z0-9]+)*( [SPC]-?\d+(\.\d+)?)?( x=\S+( (mm|in))?)?: .+")


class Case(unittest.TestCase):
    def setUp(self):
        holder = tempfile.TemporaryDirectory()
        self.addCleanup(holder.cleanup)
        self.folder = pathlib.Path(holder.name)

    def call(self, *arguments, code=0, stdout=subprocess.PIPE, **more):
        """Runs the program and insists on its exit code."""
        more = {"env": ENVIRONMENT, **more}
        done = subprocess.run([PROGRAM, *map(str, arguments)], stdin=subprocess.DEVNULL, stdout=stdout,
                              stderr=subprocess.PIPE, timeout=120, **more)
        done.stdout = (done.stdout or b"").decode("utf-8")
        done.stderr = done.stderr.decode("utf-8")
        self.assertEqual(done.returncode, code, done.stdout[-500:] + done.stderr[-2000:])
        return done

    def call_without_rights(self, *arguments, code):
        """Same as call, as somebody who may not write into the folders made here."""
        if os.geteuid() != 0:
            return self.call(*arguments, code=code)
        self.folder.chmod(0o755)
        nobody = dict(user=65534, group=65534, extra_groups=[], cwd="/")
        try:
            subprocess.run([PROGRAM, "--version"], check=True, capture_output=True, env=ENVIRONMENT, **nobody)
        except (PermissionError, subprocess.CalledProcessError):
            self.skipTest("only root can reach the program here, and root may write anywhere")
        return self.call(*arguments, code=code, **nobody)

    def locked_folder(self):
        locked = self.folder / "locked"
        locked.mkdir()
        locked.chmod(0o555)
        self.addCleanup(locked.chmod, 0o755)
        return locked

    def example(self, name="boat.sheerlay", change=lambda text: text):
        """A copy of the example in the scratch folder."""
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        text = EXAMPLE.read_text(encoding="utf-8")
        changed = change(text)
        path.write_text(changed, encoding="utf-8")
        return path

    def files(self):
        return sorted(str(p.relative_to(self.folder)) for p in self.folder.rglob("*") if p.is_file())

    def assertFindings(self, findings):
        levels = ["stop", "caution", "note"]
        for finding in findings:
            self.assertLessEqual({"level", "code", "strip", "x", "text"}, set(finding))
            self.assertIn(finding["level"], levels)
            self.assertRegex(finding["code"], r"^[a-z0-9]+(-[a-z0-9]+)*$")
            self.assertTrue(finding["text"].strip())
        weights = [levels.index(finding["level"]) for finding in findings]
        self.assertEqual(weights, sorted(weights), "heaviest first")


def finite(text):
    """json.loads that refuses NaN and Infinity."""
    def refuse(word):
        raise ValueError(word + " in JSON")
    return json.loads(text, parse_constant=refuse)


def drop_key(text, key):
    return re.sub(r"(?m)^%s\s*=.*\n" % key, "", text, count=1)


class Usage(Case):
    def test_version_and_help(self):
        self.assertRegex(self.call("--version").stdout, r"^sheerlay \d+\.\d+\.\d+\n$")
        text = self.call("--help")
        self.assertEqual(text.stderr, "")
        for word in ("check", "plan", "sheets", "patterns", "export", "new"):
            self.assertIn(word, text.stdout)
            help_ = self.call(word, "--help")
            self.assertIn("--units", help_.stdout)
            self.assertEqual(help_.stderr, "")
        self.assertIn("--json", self.call("plan", "--help").stdout)
        self.assertIn("--json", self.call("check", "--help").stdout)
        self.assertIn("--page", self.call("sheets", "--help").stdout)
        self.assertIn("--out", self.call("new", "--help").stdout)

    def test_wrong_usage(self):
        boat = self.example()
        for arguments in (
                ["frobnicate"], ["frobnicate", boat], ["frobnicate", boat, "--out", "x"],
                ["plan"], ["check"], ["sheets", boat], ["export", boat], ["new", "Boat"], ["new", "--out", "x.sheerlay"],
                ["plan", boat, "--frob"], ["plan", boat, boat], ["plan", boat, "--json"],
                ["plan", boat, "--units", "furlong"], ["sheets", boat, "--out", "x", "--page", "A7"],
                ["--units"], [boat, "plan"], ["--frob"], ["check", boat, "plan", boat]):
            with self.subTest(arguments=[str(a) for a in arguments]):
                done = self.call(*arguments, code=2, cwd=self.folder)
                self.assertEqual(done.stdout, "")
                self.assertIn("sheerlay", done.stderr)   # the usage
                self.assertEqual(self.files(), ["boat.sheerlay"])

    def test_a_project_may_be_called_like_a_command(self):
        self.example("plan")
        self.call("check", "plan", cwd=self.folder)

    def test_project_that_is_not_there(self):
        for command in (["check"], ["plan"], ["sheets", "--out", "sheets"], ["export", "--out", "solids"], ["patterns", "--out", "patterns"]):
            with self.subTest(command=command):
                done = self.call(command[0], "missing.sheerlay", *command[1:], code=1, cwd=self.folder)
                self.assertIn("missing.sheerlay", done.stderr)
                self.assertEqual(done.stdout, "")
                self.assertEqual(self.files(), [])
                self.assertEqual(list(self.folder.iterdir()), [])

    def test_project_that_is_a_folder(self):
        done = self.call("plan", self.folder, code=1)
        self.assertIn(str(self.folder), done.stderr)


class Check(Case):
    def test_text_is_findings_alone(self):
        done = self.call("check", EXAMPLE)
        for line in done.stdout.splitlines():
            self.assertRegex(line, FINDING)

    def test_json_alone(self):
        done = self.call("check", EXAMPLE, "--json", "-")
        data = finite(done.stdout)
        self.assertEqual((data["format"], data["version"]), ("sheerlay-check", 1))
        self.assertFindings(data["findings"])
        self.assertEqual(done.stderr, "")
        stations = data["fairness"]["stations"]
        self.assertEqual([s for s in stations if s["unfair"]], [])
        self.assertGreater(len([s for s in stations if s["judged"]]), 5)

    def test_battens_on_request(self):
        plain, battens = self.call("check", EXAMPLE).stdout, self.call("check", EXAMPLE, "--battens").stdout
        self.assertNotIn("Waterlines", plain)
        self.assertTrue(battens.startswith(plain))
        for block in ("How far each station", "Sheer and keel", "Waterlines", "Buttocks", "Diagonals", "equal girth"):
            self.assertIn(block, battens)

    def test_a_station_too_full_is_named(self):
        def moved(match, eighths):
            feet, inches, rest = (int(part) for part in match.group(1).split("-"))
            total = 96 * feet + 8 * inches + rest + eighths
            return "%d-%d-%d" % (total // 96, total // 8 % 12, total % 8)

        def fuller(text):   # one station: half-breadths an eighth of an inch (3.2 mm) more, buttocks an eighth lower
            head, rest = text.split('x = "8-0-0"')
            station, tail = rest.split("[[hull.station]]", 1)
            upper, buttocks = station.split("buttocks")
            upper = re.sub(r'(?<=half-breadth = ")([0-9-]+)', lambda m: moved(m, 1), upper)
            buttocks = re.sub(r'(?<=height = ")([0-9-]+)', lambda m: moved(m, -1), buttocks)
            return head + 'x = "8-0-0"' + upper + "buttocks" + buttocks + "[[hull.station]]" + tail

        done = self.call("check", self.example(change=fuller))
        named = [line for line in done.stdout.splitlines() if "unfair-station" in line]
        self.assertEqual(len(named), 1, done.stdout)
        self.assertIn("x 8-0-0 lies about", named[0])
        self.assertIn("outside", named[0])

    def test_json_file_and_text_agree(self):
        out = self.folder / "found.json"
        done = self.call("check", EXAMPLE, "--json", out)
        data = finite(out.read_text(encoding="utf-8"))
        self.assertEqual(len(data["findings"]), len(done.stdout.splitlines()))
        self.assertEqual(self.files(), ["found.json"])

    def test_unknown_keys_are_named_and_left_out(self):
        boat = self.example(change=lambda text: text + "\n[frobnication]\nspeed = 3\n")
        line = boat.read_text(encoding="utf-8").splitlines().index("[frobnication]") + 1
        done = self.call("check", boat, "--json", "-")
        self.assertRegex(done.stderr, r"boat\.sheerlay:%d: .*frobnication" % line)
        noted = [f for f in finite(done.stdout)["findings"] if "frobnication" in f["text"]]
        self.assertEqual([f["level"] for f in noted], ["note"])
        self.call("plan", boat)

    def test_required_keys(self):
        for key in ("format", "units"):
            with self.subTest(key=key):
                boat = self.example(change=lambda text: drop_key(text, key))
                done = self.call("check", boat, "--json", self.folder / "found.json", code=1)
                self.assertRegex(done.stderr, r"(?m)^\S*boat\.sheerlay:\d+: %s: .+; .+" % key)
                self.assertEqual(done.stdout, "")
                self.assertEqual(self.files(), ["boat.sheerlay"])

    def test_all_errors_of_one_run(self):
        def spoil(text):
            text = re.sub(r'(?m)^thickness\s*=.*$', 'thickness = "a thumb"', text)
            return re.sub(r'(?m)^units\s*=.*$', 'units = "cubit"', text)
        boat = self.example(change=spoil)
        done = self.call("plan", boat, "--json", "-", code=1)
        self.assertIn("a thumb", done.stderr)
        self.assertIn("cubit", done.stderr)
        self.assertEqual(done.stdout, "")


class Plan(Case):
    def test_summary_fits_one_screen_and_findings_follow(self):
        done = self.call("plan", EXAMPLE)
        lines = done.stdout.splitlines()
        findings = [line for line in lines if re.match(FINDING, line)]
        self.assertLessEqual(len(lines) - len(findings), 24)  # lines of a terminal
        self.assertEqual(lines[len(lines) - len(findings):], findings, "findings stand at the end")
        for word in ("rows a side", "edge bend", "weave", "closing", "shutter"):
            self.assertIn(word, done.stdout)

    def test_json_alone_and_whole(self):
        done = self.call("plan", EXAMPLE, "--json", "-")
        data = finite(done.stdout)
        self.assertEqual((data["format"], data["version"]), ("sheerlay-plan", 1))
        for key in ("project", "program", "stock", "hull", "strips", "marks", "coverage", "findings", "timing_ms"):
            self.assertIn(key, data)
        self.assertFindings(data["findings"])
        ids = [strip["id"] for strip in data["strips"]]
        self.assertEqual(len(ids), len(set(ids)))
        self.assertEqual(sorted(strip["order"] for strip in data["strips"]), list(range(1, len(ids) + 1)))
        version = self.call("--version").stdout.split()[1]
        self.assertEqual(data["program"].split()[-1], version)
        self.assertEqual(done.stderr, "")

    def test_summary_and_json_agree(self):
        out = self.folder / "plan.json"
        done = self.call("plan", EXAMPLE, "--json", out, "--units", "mm")
        data = finite(out.read_text(encoding="utf-8"))
        rows = {strip["row"] for strip in data["strips"]}
        self.assertRegex(done.stdout, r"\b%d rows a side\b" % len(rows))
        self.assertIn("%d pieces" % len(data["strips"]), done.stdout)
        self.assertIn("%.0f mm long" % data["hull"]["length"], done.stdout)
        metres = sum(strip["cut_length"] for strip in data["strips"]) / 1000
        self.assertIn("about %.0f m to cut" % metres, done.stdout)
        worst = max(strip["edge_bend"]["max_abs"] for strip in data["strips"])
        self.assertIn("%.2f per metre" % (1000 * worst), done.stdout)
        self.assertEqual(done.stdout.count("\n") - len(data["findings"]),
                         len([l for l in done.stdout.splitlines() if not re.match(FINDING, l)]))

    def test_what_was_put_aside_is_still_listed_with_its_reason(self):
        first = finite(self.call("plan", EXAMPLE, "--json", "-").stdout)["findings"]
        aside = next(f for f in first if f["level"] != "stop")
        entry = "\n[[put-aside]]\ncode = %s\nlevel = %s\ntext = %s\nreason = \"Seen to.\"\ndate = \"2 May\"\n" % tuple(
            json.dumps(aside[key]) for key in ("code", "level", "text"))
        if aside["strip"]:
            entry += "strip = %s\n" % json.dumps(aside["strip"])
        if aside["x"] is not None:
            entry += "from-bow = \"%.1f mm\"\n" % aside["x"]
        project = self.folder / "aside.sheerlay"
        lost = "\n[[put-aside]]\ncode = \"no-such-code\"\nlevel = \"note\"\nreason = \"Gone.\"\n"
        project.write_text(pathlib.Path(EXAMPLE).read_text(encoding="utf-8") + entry + lost, encoding="utf-8")
        out = self.folder / "aside.json"
        text = self.call("plan", project, "--json", out).stdout
        findings = finite(out.read_text(encoding="utf-8"))["findings"]
        marked = [f for f in findings if "put_aside" in f]
        self.assertEqual([(f["code"], f["text"]) for f in marked], [(aside["code"], aside["text"])])
        self.assertEqual(marked[0]["put_aside"], {"reason": "Seen to.", "date": "2 May"})
        self.assertEqual(text.count("(put aside: Seen to.)"), 1)
        unmet = [f for f in findings if f["code"] == "put-aside-unmet"]
        self.assertEqual(len(unmet), 1)
        self.assertIn("no-such-code", unmet[0]["text"])
        self.assertEqual(len(findings), len(first) + 1)

    def test_units_change_the_text_and_not_the_plan(self):
        plans = {}
        for units in ("mm", "in"):
            out = self.folder / (units + ".json")
            text = self.call("plan", EXAMPLE, "--units", units, "--json", out).stdout
            self.assertIn('"' if units == "in" else " mm", text.splitlines()[1])
            findings = "".join(re.findall(r"^(?:note|caution|stop) .*", text, re.M))
            self.assertRegex(findings, r'\d" \(\d+ mm\)' if units == "in" else r'\d mm \([^()]*\d"\)')
            plans[units] = finite(out.read_text(encoding="utf-8"))
        self.assertEqual(plans["mm"]["strips"], plans["in"]["strips"])

    def test_same_input_same_plan(self):
        first, second = (finite(self.call("plan", EXAMPLE, "--json", "-").stdout) for _ in range(2))
        for plan in (first, second):
            del plan["timing_ms"]
        self.assertEqual(first, second)

    def test_paths_with_spaces_and_other_letters(self):
        boat = self.example("Große Bøte ≈ 船/mein Boot.sheerlay")
        out = boat.parent / "der Plan ü.json"
        self.call("plan", boat, "--json", out)
        finite(out.read_text(encoding="utf-8"))
        self.call("plan", boat.name, "--json", "relative plan.json", cwd=boat.parent)
        self.assertTrue((boat.parent / "relative plan.json").exists())

    def test_a_file_that_stands_there_is_replaced_whole(self):
        out = self.folder / "plan.json"
        out.write_text("x" * 10_000_000)
        out.chmod(0o640)
        self.call("plan", EXAMPLE, "--json", out)
        finite(out.read_text(encoding="utf-8"))
        self.assertEqual(stat.S_IMODE(out.stat().st_mode), 0o640)
        self.assertEqual(self.files(), ["plan.json"], "no half-written file stays behind")

    def test_a_write_protected_file_stays(self):
        out = self.folder / "plan.json"
        out.write_text("keep me")
        out.chmod(0o444)
        self.call_without_rights("plan", EXAMPLE, "--json", out, code=1)
        self.assertEqual(out.read_text(), "keep me")

    def test_a_symbolic_link_is_followed(self):
        real = self.folder / "real.json"
        real.write_text("old")
        link = self.folder / "link.json"
        link.symlink_to(real)
        self.call("plan", EXAMPLE, "--json", link)
        self.assertTrue(link.is_symlink())
        finite(real.read_text(encoding="utf-8"))

    def test_nowhere_to_write(self):
        for path in (self.folder / "no such folder" / "plan.json", self.folder):
            with self.subTest(path=str(path)):
                done = self.call("plan", EXAMPLE, "--json", path, code=1)
                self.assertIn(str(path), done.stderr)
                self.assertEqual(self.files(), [])

    def test_full_device(self):
        with open("/dev/full", "wb") as full:
            for arguments in (["plan", EXAMPLE], ["plan", EXAMPLE, "--json", "-"], ["check", EXAMPLE, "--json", "-"],
                              ["--version"]):
                with self.subTest(arguments=[str(a) for a in arguments]):
                    self.call(*arguments, code=1, stdout=full)
        done = self.call("plan", EXAMPLE, "--json", "/dev/full", code=1)
        self.assertIn("/dev/full", done.stderr)
        self.assertTrue(stat.S_ISCHR(os.stat("/dev/full").st_mode), "a device is never replaced by a file")

    def test_a_pipe_by_its_path(self):
        done = self.call("plan", EXAMPLE, "--json", "/dev/stdout")
        self.assertIn('"sheerlay-plan"', done.stdout)

    def test_folder_that_may_not_be_written(self):
        locked = self.locked_folder()
        done = self.call_without_rights("plan", EXAMPLE, "--json", locked / "plan.json", code=1)
        self.assertIn("plan.json", done.stderr)

    def test_no_progress_in_a_pipe(self):
        self.assertNotIn("…", self.call("plan", EXAMPLE).stderr)

    def test_nothing_is_written_for_a_hull_that_cannot_be(self):
        def flatten(text):   # every half-breadth of the table nought
            return re.sub(r'half-breadth\s*=\s*("[^"]*"|[\d.]+)', 'half-breadth = 0', text)
        boat = self.example(change=flatten)
        done = self.call("plan", boat, "--json", self.folder / "plan.json", code=1)
        self.assertIn("boat.sheerlay", done.stderr)
        self.assertEqual(done.stdout, "")
        self.assertEqual(self.files(), ["boat.sheerlay"])


class Sheets(Case):
    def test_sheets_are_written_and_named(self):
        out = self.folder / "new folder" / "sheets ü"
        done = self.call("sheets", EXAMPLE, "--out", out)
        written = [pathlib.Path(line) for line in done.stdout.splitlines()]
        self.assertIn("cut-sheets.pdf", [path.name for path in written])
        self.assertEqual({path.name for path in written if path.suffix != ".pdf"}, {"cut-sheets-record.txt"})
        for path in written:
            if path.suffix == ".pdf":
                self.assertEqual(path.read_bytes()[:5], b"%PDF-")
        self.assertEqual(sorted(path.name for path in written), sorted(path.name for path in out.iterdir()))

    def test_only_what_a_new_plan_changed_comes_once_more(self):
        out = self.folder / "shop"
        boat = self.example()
        self.call("sheets", boat, "--out", out)
        self.assertFalse((out / "changed-sheets.pdf").exists())
        first = (out / "cut-sheets.pdf").read_bytes()
        self.call("sheets", boat, "--out", out)   # the same again: no revision
        self.assertEqual((out / "cut-sheets.pdf").read_bytes(), first)
        self.assertFalse((out / "changed-sheets.pdf").exists())
        boat = self.example(change=lambda text: text.replace("scarf-slope = 8 ", "scarf-slope = 10 "))
        self.call("sheets", boat, "--out", out)
        self.assertTrue((out / "changed-sheets.pdf").exists())
        self.assertTrue((out / "cut-sheets-record.txt").read_text().startswith("sheerlay-sheets 1 revision 2\n"))

    def test_page_sizes(self):
        if not shutil.which("pdfinfo"):
            self.skipTest("poppler-utils is not there")
        points = {"A4": (595, 842), "Letter": (612, 792), "A3": (842, 1191), "Tabloid": (792, 1224)}
        for page, (short, long) in points.items():
            with self.subTest(page=page):
                self.call("sheets", EXAMPLE, "--out", self.folder / page, "--page", page)
                info = subprocess.run(["pdfinfo", self.folder / page / "cut-sheets.pdf"], capture_output=True, text=True)
                width, height = map(float, re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", info.stdout).groups())
                self.assertAlmostEqual(min(width, height), short, delta=1.5)
                self.assertAlmostEqual(max(width, height), long, delta=1.5)

    def test_paper_follows_the_units(self):
        if not shutil.which("pdfinfo"):
            self.skipTest("poppler-utils is not there")
        for units, long in (("mm", 842), ("in", 792)):
            self.call("sheets", EXAMPLE, "--out", self.folder / units, "--units", units)
            info = subprocess.run(["pdfinfo", self.folder / units / "cut-sheets.pdf"], capture_output=True, text=True)
            sides = map(float, re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", info.stdout).groups())
            self.assertAlmostEqual(max(sides), long, delta=1.5)

    def test_paper_and_rows_go_by_the_project(self):
        if not shutil.which("pdfinfo"):
            self.skipTest("poppler-utils is not there")
        boat = self.example(change=lambda text: text + '\n[project]\npaper = "A3"\nrows-a-page = "several"\n')
        pages = {}
        for name, more, long in (("own", [], 1191), ("one", ["--rows", "one"], 1191), ("asked", ["--page", "A4"], 842)):
            self.call("sheets", boat, "--out", self.folder / name, *more)
            info = subprocess.run(["pdfinfo", self.folder / name / "cut-sheets.pdf"], capture_output=True, text=True)
            sides = map(float, re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", info.stdout).groups())
            self.assertAlmostEqual(max(sides), long, delta=1.5)
            pages[name] = int(re.search(r"Pages:\s+(\d+)", info.stdout)[1])
        self.assertLess(pages["own"], 0.75 * pages["one"])
        self.assertLessEqual(pages["asked"], pages["one"])

    def test_what_is_left_out_is_told(self):
        def spoil(text):   # moulds before the bow, a seat abaft the stern
            text = text.replace('x            = "5-0-0"', 'x            = "50-0-0"')
            return text + "\n[moulds]\nstations = [-5000]\n"
        done = self.call("sheets", self.example(change=spoil), "--out", self.folder / "out")
        told = {line.split()[1].rstrip(":") for line in done.stderr.splitlines() if line.startswith("stop ")}
        self.assertEqual(told, {"no-moulds", "seat-outside"})
        self.assertFalse((self.folder / "out" / "strongback.pdf").exists())
        self.assertTrue((self.folder / "out" / "fitout.pdf").exists())

    def test_no_fonts_and_no_display(self):
        (self.folder / "fonts.conf").write_text('<?xml version="1.0"?><fontconfig></fontconfig>\n')
        bare = {**ENVIRONMENT, "FONTCONFIG_FILE": str(self.folder / "fonts.conf"), "HOME": "/nonexistent"}
        boat = self.example(change=lambda text: text[:text.index("[stock]")])   # quicker
        for name, environment in (("with", ENVIRONMENT), ("bare", bare)):
            self.call("sheets", boat, "--out", self.folder / name, env=environment)
        for path in (self.folder / "with").iterdir():
            self.assertEqual(path.read_bytes(), (self.folder / "bare" / path.name).read_bytes(), path.name)
        if shutil.which("pdffonts"):
            fonts = subprocess.run(["pdffonts", self.folder / "bare" / "cut-sheets.pdf"], capture_output=True, text=True)
            rows = fonts.stdout.splitlines()[2:]
            self.assertTrue(rows)
            for row in rows:
                self.assertRegex(row, r"^Inter\S* .* yes (yes|no) +yes")   # embedded, and searchable

    def test_out_is_a_file(self):
        (self.folder / "taken").write_text("mine")
        done = self.call("sheets", EXAMPLE, "--out", self.folder / "taken", code=1)
        self.assertIn("taken", done.stderr)
        self.assertEqual(done.stdout, "")
        self.assertEqual((self.folder / "taken").read_text(), "mine")

    def test_read_only_folder(self):
        locked = self.locked_folder()
        done = self.call_without_rights("sheets", EXAMPLE, "--out", locked, code=1)
        self.assertEqual(list(locked.iterdir()), [])
        self.assertIn("locked", done.stderr)

    def test_folder_that_cannot_be_made(self):
        done = self.call("sheets", EXAMPLE, "--out", "/proc/sheets", code=1)   # even root can't
        self.assertIn("/proc/sheets", done.stderr)
        self.assertEqual(done.stdout, "")


class Export(Case):
    def test_offsets_are_read_where_they_are_asked_for(self):
        out = self.folder / "out"
        self.call("export", EXAMPLE, "--out", out, "--stations", "18 in, 7-9-0", "--waterlines", "every 3 in", "--units", "in")
        with open(out / "offsets.csv", encoding="utf-8", newline="") as file:
            rows = list(csv.DictReader(file))
        self.assertEqual([float(row["x in"]) for row in rows], [18.0, 93.0])
        self.assertIn("half-breadth at height 9.0000 in", rows[0])
        for row in rows:
            for name, cell in row.items():
                if cell and name.startswith("half-breadth"):   # the table is in sixteenths
                    self.assertEqual(float(cell) * 16, round(float(cell) * 16), name)
        wrong = self.call("export", EXAMPLE, "--out", self.folder / "none", "--buttocks", "every so often", code=2)
        self.assertIn("--buttocks", wrong.stderr)
        self.assertFalse((self.folder / "none").exists())

    def test_files_are_written_whole_and_the_same_each_time(self):
        out = [self.folder / "first ü", self.folder / "second"]
        for folder in out:
            done = self.call("export", EXAMPLE, "--out", folder)
            self.assertEqual(done.stderr, "")
            written = [pathlib.Path(line) for line in done.stdout.splitlines()]
            self.assertEqual(sorted(path.name for path in written), sorted(path.name for path in folder.iterdir()))
        self.assertEqual({path.suffix for path in written}, {".step", ".glb", ".stl", ".csv", ".svg"})
        for path in written:
            self.assertTrue(path.read_bytes() == (out[0] / path.name).read_bytes(), path.name + " differs from call to call")

        plan = json.loads(self.call("plan", EXAMPLE, "--json", "-").stdout)
        strips = {strip["id"]: strip for strip in plan["strips"]}
        thickness = plan["stock"]["thickness"]

        def flat(strip):   # what is sawn from the board
            outline = strip["outline"]
            return abs(sum(p[0] * q[1] - p[1] * q[0] for p, q in zip(outline, outline[1:] + outline[:1]))) / 2

        wood = thickness * sum(map(flat, strips.values()))
        boat = read_solids.read_glb((out[0] / "boat.glb").read_bytes())
        self.assertLessEqual(set(strips), set(boat))
        frame = set(boat) - set(strips)
        self.assertTrue(all(name.startswith(("Mould ", "Stem form ", "Transom ")) for name in frame), frame)
        self.assertGreater(len(boat), len(strips) + 3)
        total = 0.0
        for name, strip in strips.items():
            points, triangles, colour = boat[name]
            solid = [tuple(points[i] for i in t) for t in triangles]
            read_solids.need_closed(solid)
            volume = 1e9 * read_solids.volume(solid)   # the file is in metres
            total += volume
            if strip["side"] != "centre":   # a centre piece is flat from side to side here
                self.assertAlmostEqual(volume, flat(strip) * thickness, delta=0.003 * flat(strip) * thickness, msg=name)
            xs = [1000 * p[0] for p in points]   # metres, y up: x stays, z up becomes y
            edges = strip["upper_edge"] + strip["lower_edge"]
            self.assertAlmostEqual(min(xs), min(p[0] for p in edges), delta=thickness)
            self.assertAlmostEqual(max(1000 * p[1] for p in points), max(p[2] for p in edges), delta=thickness)
        self.assertAlmostEqual(total, wood, delta=0.001 * wood)
        self.assertNotEqual(boat["S01"][2], boat["P01"][2], "sides are told apart")
        self.assertEqual(set(read_solids.read_glb((out[0] / "hull.glb").read_bytes())), {"Hull starboard", "Hull port"})

        solid = read_solids.read_stl((out[0] / "strips.stl").read_bytes())
        read_solids.need_closed(solid)
        self.assertAlmostEqual(read_solids.volume(solid), wood, delta=0.001 * wood)
        moulds = read_solids.read_stl((out[0] / "moulds.stl").read_bytes())
        read_solids.need_closed(moulds)
        boards = [[tuple(points[i] for i in t) for t in triangles] for points, triangles, _ in (boat[name] for name in frame)]
        for board in boards:
            read_solids.need_closed(board)
        self.assertAlmostEqual(read_solids.volume(moulds), 1e9 * sum(map(read_solids.volume, boards)), delta=1e-4 * read_solids.volume(moulds))
        hull = read_solids.read_stl((out[0] / "hull.stl").read_bytes())
        read_solids.need_closed(hull)
        self.assertGreater(read_solids.volume(hull), 0)

        with open(out[0] / "strips.csv", newline="", encoding="utf-8") as file:
            table = list(csv.DictReader(file))
        self.assertEqual([row["strip"] for row in table], sorted(strips, key=lambda name: strips[name]["order"]))
        for row in table:
            self.assertAlmostEqual(float(row["cut length in"]) * 25.4, strips[row["strip"]]["cut_length"], delta=0.13)
        for name in ("offsets.csv", "moulds.csv"):
            with open(out[0] / name, newline="", encoding="utf-8") as file:
                rows = list(csv.reader(file))
            self.assertGreater(len(rows), 3)
            self.assertEqual({len(row) for row in rows}, {len(rows[0])}, name)

    def test_units_of_the_tables(self):
        self.call("export", EXAMPLE, "--out", self.folder / "mm", "--units", "mm")
        head = (self.folder / "mm" / "strips.csv").read_text(encoding="utf-8").splitlines()[0]
        self.assertIn("cut length mm", head)
        self.assertNotIn(" in,", head)

    def test_folder_that_cannot_be_written(self):
        done = self.call("export", EXAMPLE, "--out", "/proc/solids", code=1)   # even root can't
        self.assertIn("/proc/solids", done.stderr)
        self.assertEqual(done.stdout, "")
        locked = self.locked_folder()
        done = self.call_without_rights("export", EXAMPLE, "--out", locked, code=1)
        self.assertEqual(list(locked.iterdir()), [])
        self.assertIn("locked", done.stderr)


class New(Case):
    def test_starter_plans_as_it_is(self):
        out = self.folder / "my boat.sheerlay"
        self.assertEqual(self.call("new", "Grey Teal", "--out", out).stdout, "")
        self.assertEqual(self.files(), ["my boat.sheerlay"])
        done = self.call("plan", out, "--json", "-")
        self.assertEqual(done.stderr, "", "no warnings")
        mine, example = finite(done.stdout), finite(self.call("plan", EXAMPLE, "--json", "-").stdout)
        self.assertEqual(mine["project"], "Grey Teal")
        self.assertEqual(mine["strips"], example["strips"])

    def test_any_name(self):
        for number, name in enumerate(['Anna "the Otter"', "back\\slash", "Große Ente ½", "a\tb", "x = 1 # no comment"]):
            with self.subTest(name=name):
                out = self.folder / ("%d.sheerlay" % number)
                self.call("new", name, "--out", out)
                self.assertEqual(finite(self.call("plan", out, "--json", "-").stdout)["project"], name)

    def test_never_over_a_file_that_is_there(self):
        out = self.folder / "mine.sheerlay"
        out.write_text("my own work")
        done = self.call("new", "Grey Teal", "--out", out, code=1)
        self.assertIn("mine.sheerlay", done.stderr)
        self.assertEqual(out.read_text(), "my own work")
        self.assertEqual(self.files(), ["mine.sheerlay"])

    def test_from_a_surface(self):
        folder, out = self.folder / "files", self.folder / "again.sheerlay"
        self.call("export", EXAMPLE, "--out", folder)
        done = self.call("new", "Grey Teal", "--surface", folder / "hull.step", "--take", "beam = 40 in", "--out", out, code=1)
        self.assertIn("beam", done.stderr)
        self.assertFalse(out.exists())
        done = self.call("new", "Grey Teal", "--surface", folder / "hull.step", "--out", out)
        self.assertIn("her bow points to -x", done.stdout)
        self.assertRegex(done.stdout, r"The loft lies within 0\.0\d\d mm of the given surface")
        self.assertIn("Nothing was found on the table and the loft.", self.call("check", out).stderr)
        mine = finite(self.call("plan", out, "--json", "-").stdout)["hull"]
        example = finite(self.call("plan", EXAMPLE, "--json", "-").stdout)["hull"]
        for key in ("length", "beam", "half_girth_max"):
            self.assertAlmostEqual(mine[key], example[key], delta=0.1)
        # what is no surface, and what is cut short
        done = self.call("new", "Grey Teal", "--surface", EXAMPLE, "--out", self.folder / "no.sheerlay", code=1)
        self.assertIn("neither STEP nor IGES", done.stderr)
        (folder / "cut.step").write_bytes((folder / "hull.step").read_bytes()[:-4000])
        done = self.call("new", "Grey Teal", "--surface", folder / "cut.step", "--out", self.folder / "no.sheerlay", code=1)
        self.assertIn("cut short", done.stderr)
        self.call("new", "Grey Teal", "--surface", folder / "none.step", "--out", self.folder / "no.sheerlay", code=1)
        self.call("new", "Grey Teal", "--surface", "a", "--sections", "b", "--out", self.folder / "no.sheerlay", code=2)

    # An invented pram-like double-ender in centimetres with a decimal comma, one end for both; positions by number.
    TABLE = ("Station;0 & 6;1 & 5;2 & 4;3\nHEIGHTS ABOVE BASE (cm);;;;\nSheer;45,5;40;37,2;36\nKeel;20;4;1;0\n"
             "HALF-BREADTHS;;;;\nSheer;0,5;21,5;35;39,5\n30;...;18;33,5;39\n20;.;13;30;36,5\n10;;6,5;22;29,5\n5;;2;14,5;21\n"
             "Painted;red;red;red;red\n")

    def test_from_a_table(self):
        table, out = self.folder / "table.csv", self.folder / "boat.sheerlay"
        table.write_text(self.TABLE, encoding="utf-8")
        done = self.call("new", "Grey Teal", "--table", table, "--take", "spacing = 70 cm",
                         "--take", "half-siding = 5 mm", "--out", out)
        for words in ("semicolons", "centimetres, with a decimal comma", "row 3, \"Sheer\": heights of the sheer",
                      "row 7, \"30\": half-breadths on the waterline at height 30 cm", "row 2, \"HEIGHTS ABOVE BASE (cm)\": a heading", "row 11, \"Painted\": not used",
                      "unfolded they are 7"):
            self.assertIn(words, done.stdout)
        hull = finite(self.call("plan", out, "--json", "-").stdout)["hull"]
        # The table gives no stem profile, so the loft may run on past the outermost stations, a twentieth at most.
        self.assertGreater(hull["length"], 4200 - 15)
        self.assertLess(hull["length"], 4200 * 1.05)
        self.assertAlmostEqual(hull["beam"], 2 * 395, delta=15)

    def test_from_a_table_that_says_too_little(self):
        table, out = self.folder / "table.csv", self.folder / "boat.sheerlay"
        table.write_text(self.TABLE.replace("13;30", "1x3;30"), encoding="utf-8")
        self.assertIn("spacing = 12 in", self.call("new", "Grey Teal", "--table", table, "--out", out, code=1).stderr)
        done = self.call("new", "Grey Teal", "--table", table, "--take", "spacing = 70 cm", "--out", out, code=1)
        self.assertIn("table.csv:8: row 8, column 3 (C): \"1x3\"", done.stderr)
        self.assertEqual(done.stdout, "")
        self.call("new", "Grey Teal", "--table", self.folder / "none.csv", "--out", out, code=1)
        self.call("new", "Grey Teal", "--table", table, "--take", "spacing 70", "--out", out, code=2)
        self.call("new", "Grey Teal", "--take", "spacing = 70 cm", "--out", out, code=2)
        self.assertEqual(self.files(), ["table.csv"])

    def test_no_folder(self):
        self.call("new", "Grey Teal", "--out", self.folder / "no" / "x.sheerlay", code=1)
        self.assertEqual(self.files(), [])

    def test_name_that_is_no_text(self):
        done = subprocess.run([PROGRAM.encode(), b"new", b"\xff\xfe", b"--out", os.fsencode(self.folder / "x.sheerlay")],
                              capture_output=True, env=ENVIRONMENT)
        self.assertEqual(done.returncode, 1, done.stderr)
        self.assertEqual(self.files(), [])


class Window(Case):
    def test_without_a_display_it_says_so(self):
        for arguments in ([], [self.example()]):
            done = self.call(*arguments, code=1)
            self.assertIn("display", done.stderr)
            self.assertEqual(done.stdout, "")

    def test_a_display_that_lets_nobody_in_is_none(self):
        for display in (":9876", "no.such.host.invalid:0", "nonsense"):
            with self.subTest(display=display):
                done = subprocess.run([PROGRAM, EXAMPLE], env=dict(ENVIRONMENT, DISPLAY=display), capture_output=True,
                                      text=True, timeout=120)
                self.assertEqual(done.returncode, 1, done.stderr)
                self.assertIn("There is no X display here", done.stderr)

    def test_project_that_is_not_there(self):
        done = self.call("missing.sheerlay", code=1)
        self.assertIn("missing.sheerlay", done.stderr)


    def test_opens_on_a_project(self):
        if not shutil.which("xvfb-run"):
            self.skipTest("xvfb is not there")
        picture = self.folder / "window.png"
        runtime = self.folder / "runtime"
        runtime.mkdir(mode=0o700)
        shown = dict(ENVIRONMENT, SHEERLAY_SHOT=str(picture), SHEERLAY_STEP="10", XDG_RUNTIME_DIR=str(runtime),
                     XDG_CONFIG_HOME=str(self.folder / "config"))
        done = subprocess.run(["xvfb-run", "-a", "-s", "-screen 0 1280x900x24", PROGRAM, EXAMPLE], env=shown,
                              capture_output=True, text=True, timeout=120)
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertEqual(done.stdout, "")
        self.assertEqual(picture.read_bytes()[:8], b"\x89PNG\r\n\x1a\n")


class Files(Case):
    """Files whose messages are written down in a README's table: `| file | line | key | … |`, one row per message."""

    def table(self, folder):
        """file name -> [(line, key), …] in the order of the table."""
        found = {}
        for line in (folder / "README.md").read_text(encoding="utf-8").splitlines():
            cells = [cell.strip().strip("`") for cell in line.strip().strip("|").split("|")]
            if cells[0].endswith(".sheerlay"):
                found.setdefault(cells[0], []).append((cells[1], cells[2]))
        self.assertGreater(len(found), 5)
        return found

    def assertMessages(self, stderr, name, wanted):
        """The file's messages are these, in this order, each of the contract's form."""
        form = re.compile(r"^(?:.*/)?%s:(\d+): (\S+): .+; .+$" % re.escape(name))
        lines = [line for line in stderr.splitlines() if re.search(re.escape(name) + r":\d+:", line)]
        self.assertEqual([form.match(line) and form.match(line).groups() for line in lines], wanted, stderr)


class BadFiles(Files):
    FOLDER = ROOT / "tests" / "cli" / "bad"

    def test_each_is_refused_by_file_line_and_key(self):
        for name, wanted in self.table(self.FOLDER).items():
            for command in (["check", "--json"], ["plan", "--json"], ["sheets", "--out"], ["export", "--out"]):
                with self.subTest(name=name, command=command[0]):
                    done = self.call(command[0], self.FOLDER / name, command[1], self.folder / "out", code=1)
                    self.assertEqual(done.stdout, "")
                    self.assertMessages(done.stderr, name, wanted)
                    self.assertEqual(list(self.folder.iterdir()), [], "nothing is written")

    def test_none_is_forgotten(self):
        self.assertEqual(sorted(self.table(self.FOLDER)), sorted(path.name for path in self.FOLDER.glob("*.sheerlay")))


class OddFiles(Files):
    FOLDER = ROOT / "tests" / "cli" / "odd"

    def test_each_is_told_and_no_more(self):
        # These tables are too small to be boats, so the loft may refuse them; Check.test_unknown_keys covers one that plans.
        table = self.table(self.FOLDER)
        for path in self.FOLDER.glob("*.sheerlay"):
            with self.subTest(name=path.name):
                done = subprocess.run([PROGRAM, "check", path, "--json", "-"], capture_output=True, text=True, env=ENVIRONMENT)
                self.assertIn(done.returncode, (0, 1))
                self.assertMessages(done.stderr, path.name, table.get(path.name, []))
                self.assertEqual(done.returncode == 0, done.stdout != "", "JSON comes with exit 0 only")


if __name__ == "__main__":
    unittest.main(verbosity=2)
