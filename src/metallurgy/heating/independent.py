"""A bar in a fire and in air by a general-purpose stiff integrator, coded apart from the rest.

Method of lines on temperature itself (c(T) dT/dt), where the TypeScript conserves enthalpy;
SciPy BDF. Properties EN-FSE / EN-CPP. Prints JSON.
"""

import json
import sys

import numpy as np
import scipy
from scipy.integrate import solve_ivp

SIGMA, RHO, Z = 5.670374419e-8, 7850.0, 273.15


def heat_capacity(t):
    t = np.maximum(t - Z, 20)
    return np.select(
        [t < 600, t < 735, t < 900],
        [425 + t * (0.773 + t * (-1.69e-3 + 2.22e-6 * t)),
         666 + 13002 / np.maximum(738 - t, 1), 545 + 17820 / np.maximum(t - 731, 1)], 650.0)


def conductivity(t):
    t = np.maximum(t - Z, 20)
    return np.where(t < 800, 54 - 3.33e-2 * t, 27.3)


def bar(depth, round_bar, start, wall, gas, eps, film, times, n=160):
    """depth: half thickness or radius. Core at index 0. Returns skin-cell and core-cell K."""
    edges = np.linspace(0, depth, n + 1)
    area = edges if round_bar else np.ones(n + 1)
    volume = np.diff(edges**2) / 2 if round_bar else np.diff(edges)
    dx = depth / n

    def f(_, t):
        k = conductivity(t)
        flux = -(k[1:] + k[:-1]) / 2 * (t[1:] - t[:-1]) / dx
        q = np.zeros(n + 1)
        q[1:-1] = flux
        skin = t[-1]
        for _i in range(8):
            into = eps * SIGMA * (wall**4 - skin**4) + film * (gas - skin)
            slope = -4 * eps * SIGMA * skin**3 - film
            c = 2 * k[-1] / dx
            skin = skin + (into - c * (skin - t[-1])) / (c - slope)
        q[-1] = -(eps * SIGMA * (wall**4 - skin**4) + film * (gas - skin))
        flow = q * area
        return (flow[:-1] - flow[1:]) / volume / RHO / heat_capacity(t)

    sparsity = np.eye(n) + np.eye(n, k=1) + np.eye(n, k=-1)
    run = solve_ivp(f, (0, times[-1]), np.full(n, start), method="BDF", t_eval=times,
                    rtol=1e-7, atol=1e-6, jac_sparsity=sparsity)
    core = (9 * run.y[0] - run.y[1]) / 8
    return {"seconds": times, "core": list(core), "cell": list(run.y[-1])}


def main():
    out = {
        "scipy": scipy.__version__,
        "note": "Kelvin. Core extrapolated; cell: mean of the outermost 1/160 of the depth.",
        "plateHeating": bar(0.02, False, 293.15, 1250 + Z, 1250 + Z, 0.8, 25, [200, 400, 600, 900]),
        "roundHeating": bar(0.02, True, 293.15, 1200 + Z, 1200 + Z, 0.8, 20, [150, 300, 450, 700]),
        "plateCooling": bar(0.006, False, 1150 + Z, 293.15, 293.15, 0.8, 10, [20, 40, 80, 160]),
    }
    json.dump(out, sys.stdout, indent=1)
    print()


if __name__ == "__main__":
    main()
