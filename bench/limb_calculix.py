"""The same limb for CalculiX, as a whole process: deck in, displacements out.

Its beams give in shear, which the case leaves out, so its tip stands about 2 %
further off: it is here for its time, not for its digits."""

import pathlib
import subprocess

import numpy as np


def deck(case, parts):
    """Writes the limb as quadratic beams with elliptical sections."""
    nodes, _, axes, dv, dh = parts
    given = case["inputs"]
    stations = given["members"][0]["stations"]
    along = [s["s"] for s in stations]
    n = len(nodes) - 1
    halves = np.sort(np.concatenate([nodes, (nodes[1:] + nodes[:-1]) / 2]))
    xyz = np.stack([np.interp(halves, along, [s["xyz"][i] for s in stations]) for i in range(3)], axis=1)
    lines = ["*NODE, NSET=ALL"] + [f"{i + 1}, " + ", ".join(f"{c:.9g}" for c in p) for i, p in enumerate(xyz)]
    for i in range(n):
        lines += [f"*ELEMENT, TYPE=B32R, ELSET=E{i + 1}", f"{i + 1}, {2 * i + 1}, {2 * i + 2}, {2 * i + 3}"]
    material = given["material"]
    young, shear = given["material"]["E"], given["material"]["G"]
    lines += ["*MATERIAL, NAME=WOOD", "*ELASTIC, TYPE=ENGINEERING CONSTANTS", f"{young}, {young}, {young}, 0, 0, 0, {shear}, {shear}",
              f"{shear}", "*DENSITY", f"{given['material']['density']}"]
    for i in range(n):
        lines += [f"*ORIENTATION, NAME=O{i + 1}, SYSTEM=RECTANGULAR", ", ".join(f"{c:.9g}" for c in axes[i, :2].ravel()),
                  f"*BEAM SECTION, ELSET=E{i + 1}, MATERIAL=WOOD, ORIENTATION=O{i + 1}, SECTION=CIRC", f"{dv[i]:.9g}, {dh[i]:.9g}",
                  ", ".join(f"{c:.9g}" for c in axes[i, 1])]
    node = lambda s: 2 * int(np.argmin(abs(nodes - s))) + 1
    g = np.array(given["g"])
    lines += ["*BOUNDARY", "1, 1, 6", "*STEP", "*STATIC", "*CLOAD"]
    forces = [(p["at"]["s"], p["F"]) for p in given["loads"]] + [(b["at"]["s"], b["mass"] * g) for b in given["lumped_masses"]]
    for s, force in forces:
        lines += [f"{node(s)}, {i + 1}, {f:.9g}" for i, f in enumerate(force) if f]
    lines += ["*DLOAD"] + [f"E{i + 1}, GRAV, 9.80665, 0, 0, -1" for i in range(n)]
    lines += ["*NODE PRINT, NSET=ALL", "U", "*END STEP"]
    return "\n".join(lines) + "\n"


def run(folder, name="limb"):
    """Runs the solver and returns the displacement of the last node."""
    subprocess.run(["ccx", name], cwd=folder, check=True, stdout=subprocess.DEVNULL)
    rows = [line.split() for line in (pathlib.Path(folder) / f"{name}.dat").read_text().splitlines()]
    return np.array([float(c) for c in [r for r in rows if len(r) == 4 and r[0].isdigit()][-1][1:]])
