"""Solves the air system of a tractor and semitrailer with SciPy's implicit Radau method.

Written from the equations of docs/model.md alone: nothing of the Java engine is used or copied.
Prints a CSV of gauge pressures (psi) and temperatures (K) to tractor-trailer.csv beside itself.

Needs Python 3 with NumPy and SciPy.  Run: python3 generate.py
"""

import math
import os
import sys

import numpy as np
import scipy
from scipy.integrate import solve_ivp

# --- air and units -----------------------------------------------------------------------------
R = 287.05
GAMMA = 1.4
CP = GAMMA * R / (GAMMA - 1)
CV = R / (GAMMA - 1)
RHO0 = 1.185
T0 = 293.15
ATM = 101325.0
ROOM = 293.15
PSI = 6894.757293168361
IN3 = 1.6387064e-5
IN = 0.0254
LINEAR = 0.999  # ratio of the pressures from which the flow is a straight line

# --- sizes -------------------------------------------------------------------------------------
B = 0.35  # critical ratio of every way
BAND = 2 * PSI  # a lapping valve is wide open at this distance from its aim
DEADBAND = 1 * PSI  # an exhaust opens this far above the command
CHECK = 1 * PSI  # opening pressure of a check valve
RELAY = 3 * PSI  # a relay valve delivers this much less than its control line
WALL = 40.0  # time constant of a reservoir's wall, s
PUMPED_AT = 320.0  # temperature of the compressor's air, K


def way(hundred_millionths):
    return hundred_millionths * 1e-8


def flow(c, b, up, down, t_up):
    """ISO 6358 mass flow from up to down, kg/s, for up >= down (absolute, Pa)."""
    choked = c * RHO0 * up * math.sqrt(T0 / t_up)
    r = down / up
    if r <= b:
        return choked
    if r < LINEAR:
        return choked * math.sqrt(1 - ((r - b) / (1 - b)) ** 2)
    edge = math.sqrt(1 - ((LINEAR - b) / (1 - b)) ** 2)
    return choked * edge * (1 - r) / (1 - LINEAR)


def between(c, b, pa, pb, ta, tb):
    """Flow from a to b, negative if it goes the other way."""
    return flow(c, b, pa, pb, ta) if pa >= pb else -flow(c, b, pb, pa, tb)


def conductance(c, b, pa, pb, ta, tb):
    """Flow over difference of the pressures; near equal pressures the slope of the line."""
    high, t = (pa, ta) if pa >= pb else (pb, tb)
    if abs(pa - pb) <= (1 - LINEAR) * high:
        edge = math.sqrt(1 - ((LINEAR - b) / (1 - b)) ** 2)
        return c * RHO0 * math.sqrt(T0 / t) * edge / (1 - LINEAR)
    return between(c, b, pa, pb, ta, tb) / (pa - pb)


def lapped(c, b, ps, pd, ts, distance):
    """Flow of a lapping way from ps to pd, `distance` short of where it aims at."""
    if distance <= 0:
        return 0.0
    g = conductance(c, b, ps, pd, ts, ROOM)
    return min(g * (ps - pd), g * max(ps - pd, BAND) / BAND * distance)


class Chamber:
    """V = rest + area x stroke, the stroke a line with corners over gauge pressure."""

    def __init__(self, rest, area, corners):
        self.rest = rest * IN3
        self.area = area * IN * IN
        self.p = [c[0] * PSI for c in corners]
        self.s = [c[1] * IN for c in corners]

    def volume_and_slope(self, gauge):
        if gauge <= self.p[0]:
            return self.rest + self.area * self.s[0], 0.0
        for i in range(1, len(self.p)):
            if gauge <= self.p[i]:
                rise = (self.s[i] - self.s[i - 1]) / (self.p[i] - self.p[i - 1])
                stroke = self.s[i - 1] + rise * (gauge - self.p[i - 1])
                return self.rest + self.area * stroke, self.area * rise
        return self.rest + self.area * self.s[-1], 0.0


def service(area, rest, full, per_psi):
    """5 psi moves the rod, at 8 psi and 0.5 in the linings touch, then it yields evenly."""
    return Chamber(rest, area, [(5, 0), (8, 0.5), (8 + (full - 0.5) / per_psi, full)])


SPRING = Chamber(20, 30, [(48.3, 0), (65, 2.5)])
TYPE_20 = service(20, 9, 2.25, 0.007)
TYPE_30 = service(30, 14, 2.5, 0.0105)

# Reservoirs have a temperature of their own; equal chambers are solved once and counted.
RESERVOIRS = {"supply": 1400, "primary": 2400, "secondary": 1800, "trailer": 2800}
LINES = {
    "supply-line": 90,
    "primary-control": 20,
    "control-line": 73,
    "front-line": 15,
    "rear-line": 20,
    "behind-line": 20,
    "parking-line": 20,
}
CHAMBERS = {
    "front": (TYPE_20, 2),
    "rear": (TYPE_30, 4),
    "behind": (TYPE_30, 4),
    "spring": (SPRING, 2),
}
PRESSURES = list(RESERVOIRS) + list(LINES) + list(CHAMBERS)
INDEX = {name: i for i, name in enumerate(PRESSURES)}
COUNT = len(PRESSURES)
HOT = {name: COUNT + i for i, name in enumerate(RESERVOIRS)}
CHARGED = list(RESERVOIRS) + ["supply-line", "parking-line", "spring"]


class Balance:
    """Collects the mass and the enthalpy that enter each volume."""

    def __init__(self, y):
        self.y = y
        self.mass = dict.fromkeys(PRESSURES, 0.0)
        self.heat = dict.fromkeys(PRESSURES, 0.0)

    def p(self, name):
        return ATM if name == "air" else self.y[INDEX[name]]

    def t(self, name):
        return self.y[HOT[name]] if name in HOT else ROOM

    def move(self, a, b, rate, times=1):
        """Moves air from a to b (backwards if negative); b is one of `times` equal volumes."""
        t = self.t(a) if rate >= 0 else self.t(b)
        if a != "air":
            self.mass[a] -= times * rate
            self.heat[a] -= times * rate * CP * t
        if b != "air":
            self.mass[b] += rate
            self.heat[b] += rate * CP * t

    def orifice(self, a, b, c, times=1, ratio=B):
        self.move(a, b, between(c, ratio, self.p(a), self.p(b), self.t(a), self.t(b)), times)

    def check(self, a, b, c):
        up = self.p(a) - CHECK
        if up > self.p(b):
            self.move(a, b, flow(c, B, up, self.p(b), self.t(a)))

    def lapping(self, a, b, command):
        c = way(12)
        pd = self.p(b)
        self.move(a, b, lapped(c, B, self.p(a), pd, self.t(a), command - pd))
        self.move(b, "air", max(0.0, lapped(c, B, pd, ATM, ROOM, pd - command - DEADBAND)))

    def pump(self, name, rate):
        self.mass[name] += rate
        self.heat[name] += rate * CP * PUMPED_AT


def rates(t, y, pedal, pumped):
    air = Balance(y)
    command = ATM + pedal * PSI
    air.pump("supply", pumped)
    air.check("supply", "primary", way(8))
    air.check("supply", "secondary", way(8))
    air.orifice("primary", "supply-line", way(4))
    air.check("supply-line", "trailer", way(4))
    air.orifice("primary", "air", 1.3e-10, ratio=0.5)
    air.lapping("primary", "primary-control", command)
    air.lapping("secondary", "front-line", command)
    air.orifice("primary-control", "control-line", way(6))
    air.lapping("primary", "rear-line", air.p("primary-control") - RELAY)
    air.lapping("trailer", "behind-line", air.p("control-line") - RELAY)
    air.orifice("primary", "parking-line", way(3))
    air.orifice("parking-line", "spring", way(5), 2)
    for name in ("front", "rear", "behind"):
        air.orifice(name + "-line", name, way(6), CHAMBERS[name][1])
    out = np.zeros_like(y)
    for name, size in RESERVOIRS.items():
        volume = size * IN3
        p, temperature = air.p(name), air.t(name)
        mass = p * volume / (R * temperature)
        heat = air.heat[name] + mass * CV / WALL * (ROOM - temperature)
        out[INDEX[name]] = R / (CV * volume) * heat
        out[HOT[name]] = (heat - CV * temperature * air.mass[name]) / (mass * CV)
    for name, size in LINES.items():
        out[INDEX[name]] = air.mass[name] * R * ROOM / (size * IN3)
    for name, (law, _) in CHAMBERS.items():
        p = air.p(name)
        volume, slope = law.volume_and_slope(p - ATM)
        out[INDEX[name]] = air.mass[name] * R * ROOM / (volume + p * slope)
    return out


# --- what is done: from when, pedal psi, air pumped kg/s ------------------------------------------
def script():
    """80 psi held for half a minute, released; fourteen full applications; then a rebuild."""
    acts = [(0.0, 0, 0.0), (0.5, 80, 0.0), (30.5, 0, 0.0)]
    for k in range(14):
        acts.append((34.0 + 4 * k, 150, 0.0))
        acts.append((36.0 + 4 * k, 0, 0.0))
    acts.append((90.0, 0, 0.006))
    return acts


END = 210.0


def sample_times():
    fine = set()
    for start, end in ((0.5, 1.5), (30.5, 32.0), (34.0, 37.0), (62.0, 65.0)):
        fine.update(round(start + 0.05 * i, 2) for i in range(1, int((end - start) * 20) + 1))
    fine.update(float(s) for s in range(1, int(END) + 1))
    return sorted(fine)


def solve(rtol):
    y = np.full(COUNT + len(HOT), ATM)
    for name in CHARGED:
        y[INDEX[name]] = ATM + 120 * PSI
    for name in HOT:
        y[HOT[name]] = ROOM
    atol = np.full(len(y), rtol * 1e5)
    atol[COUNT:] = rtol * 300
    wanted = sample_times()
    found = []
    acts = script()
    for i, (start, pedal, pumped) in enumerate(acts):
        end = acts[i + 1][0] if i + 1 < len(acts) else END
        times = [t for t in wanted if start < t <= end]
        solution = solve_ivp(
            rates,
            (start, end),
            y,
            method="Radau",
            t_eval=times if times and times[-1] == end else times + [end],
            args=(pedal, pumped),
            rtol=rtol,
            atol=atol,
            first_step=1e-7,
        )
        if not solution.success:
            sys.exit(solution.message)
        for k, t in enumerate(times):
            found.append((t, solution.y[:, k]))
        y = solution.y[:, -1]
    return found


SHOWN = ["supply", "primary", "secondary", "trailer", "front", "rear", "behind", "spring"]


def main():
    fine = solve(1e-8)
    coarse = solve(1e-7)
    worst = max(
        abs(a[INDEX[n]] - b[INDEX[n]]) / PSI for (_, a), (_, b) in zip(fine, coarse) for n in SHOWN
    )
    print("SciPy", scipy.__version__, "NumPy", np.__version__, "Python", sys.version.split()[0])
    print("largest change of a pressure from rtol 1e-7 to 1e-8: %.2e psi" % worst)
    path = os.path.join(os.path.dirname(os.path.abspath(__file__)), "tractor-trailer.csv")
    with open(path, "w", encoding="ascii", newline="\n") as out:
        out.write("time s," + ",".join(n + " psi" for n in SHOWN) + ",primary K\n")
        for t, y in fine:
            row = ["%.2f" % t] + ["%.5f" % ((y[INDEX[n]] - ATM) / PSI) for n in SHOWN]
            out.write(",".join(row + ["%.4f" % y[HOT["primary"]]]) + "\n")
    print(len(fine), "rows")


if __name__ == "__main__":
    main()
