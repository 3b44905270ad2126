"""A limb as a dense frame of straight prismatic elements in NumPy."""

import numpy as np

UP = np.array([0.0, 0.0, 1.0])


def mesh(case, size):
    """Cuts a limb without forks at stations, loads and masses, and each piece
    into elements of at most the size. Returns what the elements need."""
    given = case["inputs"]
    stations = given["members"][0]["stations"]
    along = np.array([s["s"] for s in stations])
    points = np.array([s["xyz"] for s in stations])
    marks = [p["at"]["s"] for p in given["loads"] + given["lumped_masses"]]
    knots = np.unique(np.concatenate([along, marks]))
    nodes = [knots[:1]]
    for a, b in zip(knots[:-1], knots[1:]):
        nodes.append(np.linspace(a, b, max(1, int(np.ceil((b - a) / size - 1e-9))) + 1)[1:])
    nodes = np.concatenate(nodes)
    at = lambda s, name: np.interp(s, along, [q[name] for q in stations])
    xyz = np.stack([np.interp(nodes, along, points[:, i]) for i in range(3)], axis=1)
    middle = (nodes[1:] + nodes[:-1]) / 2
    span = np.diff(xyz, axis=0)
    length = np.linalg.norm(span, axis=1)
    x = span / length[:, None]
    v = UP - x[:, 2:] * x
    v /= np.linalg.norm(v, axis=1)[:, None]
    axes = np.stack([x, v, np.cross(x, v)], axis=1)
    return nodes, length, axes, at(middle, "d_v"), at(middle, "d_h")


def assemble(case, length, axes, dv, dh):
    """Returns the stiffness matrix with the root clamped."""
    young, shear = case["inputs"]["material"]["E"], case["inputs"]["material"]["G"]
    n = len(length)
    area = np.pi / 4 * dv * dh
    upright, across = np.pi / 64 * dh * dv**3, np.pi / 64 * dv * dh**3
    torsion = np.pi / 16 * (dv * dh) ** 3 / (dv**2 + dh**2)
    k = np.zeros((n, 12, 12))
    for freedom, stiffness in ((0, young * area / length), (3, shear * torsion / length)):
        k[:, freedom, freedom] = k[:, freedom + 6, freedom + 6] = stiffness
        k[:, freedom, freedom + 6] = k[:, freedom + 6, freedom] = -stiffness
    for shift, turn, sign, second in ((1, 5, 1, upright), (2, 4, -1, across)):
        b = young * second / length**3
        for i, j, value in (
            (shift, shift, 12 * b), (shift, turn, sign * 6 * b * length), (shift, shift + 6, -12 * b), (shift, turn + 6, sign * 6 * b * length),
            (turn, turn, 4 * b * length**2), (turn, shift + 6, -sign * 6 * b * length), (turn, turn + 6, 2 * b * length**2),
            (shift + 6, shift + 6, 12 * b), (shift + 6, turn + 6, -sign * 6 * b * length), (turn + 6, turn + 6, 4 * b * length**2),
        ):
            k[:, i, j] = k[:, j, i] = value
    turned = np.zeros((n, 12, 12))
    for i in range(0, 12, 3):
        turned[:, i:i + 3, i:i + 3] = axes
    k = turned.transpose(0, 2, 1) @ k @ turned
    order = 6 * (n + 1)
    freedoms = 6 * np.arange(n)[:, None] + np.arange(12)
    flat = (freedoms[:, :, None] * order + freedoms[:, None, :]).ravel()
    return np.bincount(flat, weights=k.ravel(), minlength=order * order).reshape(order, order)[6:, 6:]


def load(case, nodes, length, axes, dv, dh):
    """Returns the forces at the nodes beyond the root, weight included."""
    given = case["inputs"]
    g = np.array(given["g"])
    force = np.zeros((len(nodes), 6))
    if given["self_weight"]:
        line = (given["material"]["density"] * np.pi / 4 * dv * dh)[:, None] * g
        half = line * length[:, None] / 2
        end = np.cross(axes[:, 0], line) * length[:, None] ** 2 / 12
        force[:-1] += np.hstack([half, end])
        force[1:] += np.hstack([half, -end])
    for point in given["loads"]:
        force[np.argmin(abs(nodes - point["at"]["s"])), :3] += point["F"]
    for body in given["lumped_masses"]:
        force[np.argmin(abs(nodes - body["at"]["s"])), :3] += body["mass"] * g
    return force[1:].ravel()


def assemble_and_solve(case, parts):
    """Returns the displacement of the tip."""
    nodes, length, axes, dv, dh = parts
    return np.linalg.solve(assemble(case, length, axes, dv, dh), load(case, nodes, length, axes, dv, dh))[-6:-3]
