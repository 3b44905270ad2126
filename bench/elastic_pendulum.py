"""The elastic pendulum with SciPy's DOP853, in plane coordinates."""

import math

from scipy.integrate import solve_ivp


def motion(case):
    """Returns rates and start of the motion and its end time."""
    given = case["inputs"]
    g, mass, natural, k = given["g"], given["m"], given["L_natural"], given["k"]
    angle, distance = math.radians(given["theta0_deg"]), given["r_initial"]

    def rates(_, y):
        x, depth, vx, vdepth = y
        r = math.sqrt(x * x + depth * depth)
        pull = max(0.0, k * (r - natural)) / (mass * r)
        return vx, vdepth, -pull * x, g - pull * depth

    start = [distance * math.sin(angle), distance * math.cos(angle), 0.0, 0.0]
    return rates, start, 2 * 2 * math.pi * math.sqrt(natural / g)


def follow(case, relative, absolute):
    """Returns the end of the motion and the number of evaluations."""
    rates, start, end = motion(case)
    result = solve_ivp(rates, (0.0, end), start, method="DOP853", rtol=relative, atol=absolute)
    return result.y[:2, -1], result.nfev
