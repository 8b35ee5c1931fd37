"""Plans a project with the built program and hands plan.json to the independent checker.
Usage: check_plan_of.py PROGRAM PROJECT        exit 0: every check passes"""
import pathlib
import subprocess
import sys
import tempfile

program, project = sys.argv[1:]
checker = pathlib.Path(__file__).resolve().parent.parent / "tools" / "check_plan.py"
with tempfile.TemporaryDirectory() as folder:
    plan = pathlib.Path(folder) / "plan.json"
    planned = subprocess.run([program, "plan", project, "--json", str(plan)], capture_output=True, text=True)
    if planned.returncode != 0 or not plan.exists():
        sys.exit("the project was not planned (exit %d):\n%s" % (planned.returncode, planned.stderr))
    sys.exit(subprocess.run([sys.executable, str(checker), str(plan)]).returncode)
