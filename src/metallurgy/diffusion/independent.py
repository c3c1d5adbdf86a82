"""Carbon between layers by a general-purpose stiff integrator, coded apart from the TypeScript.

Method of lines: chemical potential on cell centres, mobility averaged (not in series) at faces,
own grids, SciPy's LSODA with a banded Jacobian. Prints JSON. Sources as in the physics page:
CPART (diffusivity), OC-TDB, TDB, MOBK (thermodynamics).
"""

import json
import math
import sys

import numpy as np
import scipy
from scipy.integrate import solve_ivp

R = 8.31451
MASS = {"Fe": 55.847, "Ni": 58.69, "Si": 28.0855}


def shares(steel):
    moles = {"Fe": (100 - steel["C"] - steel.get("Ni", 0) - steel.get("Si", 0)) / MASS["Fe"]}
    for e in ("Ni", "Si"):
        if steel.get(e, 0):
            moles[e] = steel[e] / MASS[e]
    total = sum(moles.values())
    return {e: n / total for e, n in moles.items()}, total / (100 - steel["C"])


def excess(y, t):
    """ln activity less ln(yC/(1-yC)) less the part in carbon; and that part's slope. Over RT."""
    fe, ni, si = y["Fe"], y.get("Ni", 0.0), y.get("Si", 0.0)
    e = fe * (77207 - 15.877 * t) + ni * (62000 - 7.6 * t) + si * (-71510 + 60.5 * t)
    d = fe - ni
    e += fe * ni * (49074 - 7.32 * t - 25800 * d)
    e -= fe * ni * (-12054.355 + 3.27413 * t + (11082.1315 - 4.45077 * t) * d - 725.805 * d * d)
    d = fe - si
    e += fe * si * (143220 + 39.31 * t - 216321 * d)
    e -= fe * si * (-125248 + 41.116 * t - 142708 * d + 89907 * d * d)
    slope = -34671 * fe + ni * (-14902 + 7.5 * t)
    return e / (R * t), slope / (R * t)


def solve(layers, points, stretches, cells):
    """layers: (steel, thickness m). points: (s, K). stretches: one for each straight piece."""
    width, carbon, per_metal, group = [], [], [], []
    ys = []
    for g, (steel, thickness) in enumerate(layers):
        y, moles = shares(steel)
        ys.append(y)
        for _ in range(cells):
            width.append(thickness / cells)
            carbon.append(steel["C"])
            per_metal.append(1 / (12.011 * moles))
            group.append(g)
    width, c, per_metal, group = map(np.array, (width, carbon, per_metal, group))
    gap = (width[1:] + width[:-1]) / 2

    def right_side(t_start, t_end, k_start, k_end, stretch):
        def f(t, c):
            k = k_start + (k_end - k_start) * (t - t_start) / (t_end - t_start)
            base, slope = np.array([excess(y, k) for y in ys]).T
            y = per_metal * c / (100 - c)
            mu = base[group] + (1 - 2 * y) * slope[group] + np.log(y / (1 - y))
            d = 4.53e-7 * (1 + y * (1 - y) * 8339.9 / k)
            d = d * np.exp(-(1 / k - 2.221e-4) * (17767 - 26436 * y))
            dy = per_metal * 100 / (100 - c) ** 2
            mobility = d / (dy * (1 / (y * (1 - y)) + 2 * 34671 / (R * k)))
            # potential is in steps across a weld: both half-cells in series there
            half = width / mobility / 2
            flux = -(mu[1:] - mu[:-1]) / (half[1:] + half[:-1])
            same = group[1:] == group[:-1]
            mean = (mobility[1:] + mobility[:-1]) / 2
            flux = np.where(same, -mean * (mu[1:] - mu[:-1]) / gap, flux)
            out = np.zeros_like(c)
            out[:-1] -= flux
            out[1:] += flux
            return out / width / stretch**2

        return f

    for (t0, k0), (t1, k1), s in zip(points, points[1:], stretches):
        if t1 <= t0:
            continue
        f = right_side(t0, t1, k0, k1, s)
        run = solve_ivp(f, (t0, t1), c, method="LSODA", rtol=1e-8, atol=1e-10, lband=1, uband=1)
        c = run.y[:, -1]
    return [[float(np.mean(c[group == g])), float(c[group == g][0]), float(c[group == g][-1])]
            for g in range(len(layers))]


def main():
    zero = 273.15
    plain = lambda c: {"C": c}
    heats, stretches, t, s = [], [], 0.0, 1.0
    for _ in range(3):
        heats += [(t, 850 + zero), (t + 120, 1150 + zero), (t + 420, 1150 + zero), (t + 600, 850 + zero)]
        stretches += [s, s, s, s * 0.7]
        t += 600
        s *= 0.7
    result = {
        "scipy": scipy.__version__,
        "cells": 400,
        "note": "Each layer: mean, first cell, last cell, wt% carbon.",
        "route": solve([(plain(0.95), 0.5e-3), (plain(0.10), 0.5e-3)], heats, stretches[:-1], 400),
        "nickel": solve([({"C": 0.6, "Ni": 2.0}, 1e-4), (plain(0.6), 1e-4)],
                        [(0, 1100 + zero), (600, 1100 + zero)], [1.0], 400),
        "silicon": solve([({"C": 0.45, "Si": 3.8}, 4e-3), ({"C": 0.45, "Si": 0.5}, 4e-3)],
                         [(0, 1050 + zero), (36000, 1050 + zero)], [1.0], 400),
    }
    json.dump(result, sys.stdout, indent=1)
    print()
    assert all(math.isfinite(v) for k in ("route", "nickel", "silicon") for r in result[k] for v in r)


if __name__ == "__main__":
    main()
