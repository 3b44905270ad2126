"""Times the Python side, reads the Go side from `go test -bench` output and
prints both with their ratios. Called by compare.sh."""

import ctypes
import json
import pathlib
import re
import shutil
import sys
import tempfile
import time

import numpy as np
import scipy

import elastic_pendulum
import limb_calculix
import limb_frame
import monte_carlo

CASES = pathlib.Path(__file__).parent.parent / "work" / "testdata" / "cases"
ELEMENT = 0.185  # m; makes 41 elements with a node at every load


def seconds(run, times):
    """The least time of several runs after one to warm up: what the machine
    does when others leave it alone. Both sides are taken so."""
    run()
    spent = []
    for _ in range(times):
        start = time.perf_counter()
        run()
        spent.append(time.perf_counter() - start)
    return min(spent)


def go_side(path):
    """Benchmarks by name, of several runs the fastest. Run on one processor,
    names have no suffix, on two -2."""
    rows = {}
    for line in pathlib.Path(path).read_text().splitlines():
        match = re.match(r"Benchmark(\S+)\s+\d+\s+(.*)", line)
        if match:
            words = match.group(2).split()
            rows.setdefault(match.group(1), []).append({u: float(v) for v, u in zip(words[::2], words[1::2])})
    return {name: min(runs, key=lambda row: row["ns/op"]) for name, runs in rows.items()}


def linear_algebra():
    """Which library NumPy calls and, for OpenBLAS, which kernel it picked."""
    for line in pathlib.Path("/proc/self/maps").read_text().splitlines():
        path = line.split()[-1]
        if "openblas" in path:
            for name in ("openblas_get_corename", "openblas_get_corename64_", "scipy_openblas_get_corename64_"):
                corename = getattr(ctypes.CDLL(path), name, None)
                if corename:
                    corename.restype = ctypes.c_char_p
                    return f"OpenBLAS, kernel {corename().decode()}"
            return "OpenBLAS, kernel unknown"
    return "no OpenBLAS found; the reference library, which is slower"


def show(what, spent, note=""):
    print(f"  {what:<58}{1e3 * spent:10.3f} ms  {note}")


def pendulum(go):
    print("Elastic pendulum, two small periods (pend_elastic_01)")
    case = json.loads((CASES / "pend_elastic_01.json").read_text())
    exact, _ = elastic_pendulum.follow(case, 1e-13, 1e-15)
    end, evaluations = elastic_pendulum.follow(case, 1e-8, 1e-10)
    error = 1e9 * float(np.hypot(*(end - exact)))
    spent = seconds(lambda: elastic_pendulum.follow(case, 1e-8, 1e-10), 101)
    show("SciPy DOP853, rtol 1e-8", spent, f"{evaluations} evaluations, {error:.3g} nm off")
    rows = {name: row for name, row in go.items() if name.startswith("ElasticTwoPeriods/")}
    for name, row in rows.items():
        show(f"Go, {name.split('/')[1]}", row["ns/op"] / 1e9, f"{row['evaluations']:.0f} evaluations, {row['nm-error']:.3g} nm off")
    as_good = min((row for row in rows.values() if row["nm-error"] <= error), key=lambda row: row["ns/op"], default=None)
    if as_good is None:
        print("  no Go row is as exact: no ratio")
    else:
        print(f"  ratio at equal or smaller error: {spent / (as_good['ns/op'] / 1e9):.0f}")


def limb(go):
    print("Limb of 41 elements, weight, two pulls and a lumped mass (limb_10)")
    case = json.loads((CASES / "limb_10.json").read_text())
    want = np.array(case["expected"]["displacement"]["tip"]["u_m"])
    off = lambda tip: np.linalg.norm(tip - want) / np.linalg.norm(want)
    parts = limb_frame.mesh(case, ELEMENT)
    elements = len(parts[1])
    tip = limb_frame.assemble_and_solve(case, parts)
    stiffness, force = limb_frame.assemble(case, *parts[1:]), limb_frame.load(case, *parts)
    ready = seconds(lambda: limb_frame.assemble_and_solve(case, parts), 101)
    whole = seconds(lambda: limb_frame.assemble_and_solve(case, limb_frame.mesh(case, ELEMENT)), 101)
    solve = seconds(lambda: np.linalg.solve(stiffness, force), 101)
    go_ready, go_whole = go["KinkedLimb/assembleSolve"], go["KinkedLimb/model"]
    show("NumPy dense, assemble and solve", ready, f"{elements} elements, tip {off(tip):.1e} off")
    show("  of which solve", solve)
    show("NumPy dense, mesh, assemble and solve", whole)
    show("Go, assemble and solve", go_ready["ns/op"] / 1e9, f"{go_ready['elements']:.0f} elements, tip {1e-9 * go_ready['ppb-error']:.1e} off")
    show("Go, model, mesh, assemble and solve", go_whole["ns/op"] / 1e9)
    print(f"  ratio, assemble and solve: {ready / (go_ready['ns/op'] / 1e9):.0f}; with the mesh: {whole / (go_whole['ns/op'] / 1e9):.0f}")
    if shutil.which("ccx") is None:
        print("  ccx is not installed: left out")
        return
    with tempfile.TemporaryDirectory() as folder:
        (pathlib.Path(folder) / "limb.inp").write_text(limb_calculix.deck(case, parts))
        spent = seconds(lambda: limb_calculix.run(folder), 7)
        show("CalculiX, whole process, for information", spent, f"tip {off(limb_calculix.run(folder)):.1e} off")


def sampling(go):
    print("Plain Monte Carlo of a limb in bending, six inputs (rel_limb_01)")
    case = json.loads((CASES / "rel_limb_01.json").read_text())
    best = 0
    for chunk in (1_000, 4_000, 16_000, 50_000, 250_000, 1_000_000):
        chance, samples = monte_carlo.run(case, 1_000_000, chunk)
        rate = samples / seconds(lambda: monte_carlo.run(case, 1_000_000, chunk), 25)
        best = max(best, rate)
        print(f"  NumPy, chunks of {chunk:<43,}{rate / 1e6:10.1f} million samples/s, chance {chance:.5f}")
    rates = {}
    for name, row in go.items():
        if name.startswith("PlainMonteCarloOfTheCase"):
            rates[name] = row["samples"] / (row["ns/op"] / 1e9)
            print(f"  Go, {'two cores' if name.endswith('-2') else 'one core':<57}{rates[name] / 1e6:10.1f} million samples/s, chance {row['chance']:.5f}")
    one, two = rates["PlainMonteCarloOfTheCase"], rates.get("PlainMonteCarloOfTheCase-2")
    print(f"  ratio, one core against the best of NumPy: {one / best:.1f}" + (f"; two cores against one: {two / one:.2f}" if two else ""))


def main():
    go = go_side(sys.argv[1])
    print(f"# Python {sys.version.split()[0]} at {sys.executable}, numpy {np.__version__}, scipy {scipy.__version__}, {linear_algebra()}")
    pendulum(go)
    limb(go)
    sampling(go)


if __name__ == "__main__":
    main()
