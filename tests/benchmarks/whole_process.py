"""How long one check takes as a whole process, as ratios to peers measured in the same run.

    pip install . check-jsonschema && python tests/benchmarks/whole_process.py [ROUNDS]

Run it outside of the source folder's import path, against the installed command. The peers are bare Python and a
general-purpose schema validator's command with our schema on the same file; runs are paired, medians are of pairs.
"""

import os
import shutil
import statistics
import subprocess
import sys
import time
from pathlib import Path

ROOT = Path(__file__).parents[2]


def seconds(command: list[str]) -> float:
    """Wall time of one run of a command."""
    environment = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
    start = time.perf_counter()
    subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, cwd="/", env=environment, check=False)
    return time.perf_counter() - start


def paired(ours: list[str], peer: list[str], rounds: int) -> str:
    """Median of the ratios of paired runs, with the least and greatest."""
    seconds(ours), seconds(peer)
    ratios = sorted(seconds(ours) / seconds(peer) for _ in range(rounds))
    return f"{statistics.median(ratios):.2f} ({ratios[0]:.2f} to {ratios[-1]:.2f})"


def main() -> None:
    """Print the ratios for each sample near 300 lines and for a file with a fault."""
    rounds = int(sys.argv[1]) if len(sys.argv) > 1 else 15
    here = Path(sys.executable).parent
    command = shutil.which("airtally", path=str(here)) or "airtally"
    validator = shutil.which("check-jsonschema", path=str(here))
    schema = str(ROOT / "schemas" / "design.schema.json")
    for sample in ("cottage-b-sketch", "cottage-c-permit", "gas-house-big-hood"):
        design = str(ROOT / "samples" / f"{sample}.yaml")
        ours = [command, "check", design]
        print(f"{sample}: to bare Python {paired(ours, [sys.executable, '-c', 'pass'], rounds)}", end="")
        if validator:
            peer = [validator, "--schemafile", schema, design]
            print(f", to a schema validator's command {paired(ours, peer, rounds)}", end="")
        print()


if __name__ == "__main__":
    main()
