"""The ride of docs/theory.md a second time, for a general-purpose ODE solver (scipy).

Reads rides as typed numbers of a kit, prints how each ends. Written from the theory page, not from the engine's code:
legs of `solve_ivp` with terminal events instead of one integrator with handlers, and limits that are found as the
least of a list. SI units; what a name does not say is in the page's own symbols.

    ride-twin.py RIDES.json [METHOD] [RELATIVE_TOLERANCE] [HOW_MANY]
"""
import bisect
import json
import math
import sys
import time

import numpy
from scipy.integrate import solve_ivp
from scipy.interpolate import Akima1DInterpolator

G = 9.80665
AIR_VISCOSITY, AIR_CONDUCTIVITY, AIR_PRANDTL = 15.89e-6, 0.0263, 0.707  # at 300 K
COPPER_PER_K, COPPER_AT_C = 0.00393, 20.0
HALT_M = 0.005
SIZES = numpy.array([10, 1, 0.1, 10, 10, 1e4, 1e3, 1e3])  # of x, v, q, T_w, T_c and the energies


def or_rule(value, rule):
    return rule if value is None else value


class Profile:
    """Heights averaged twice and joined by Akima's curve; the speed that is allowed at every metre."""

    def __init__(self, points, smooth_m, cruise, braking):
        xs = [p[0] for p in points]
        hs = [p[1] for p in points]
        self.length = xs[-1]
        if smooth_m > 0:
            spacing = max(min(5.0, smooth_m / 4), self.length / 20000)
            count = max(5, math.ceil(self.length / spacing) + 1)
            grid = numpy.linspace(0, self.length, count)
            half = round(smooth_m / 2 / (self.length / (count - 1)))
            hs = self.averaged(self.averaged(numpy.interp(grid, xs, hs), half), half)
            self.at = grid.tolist()
        else:
            self.at = xs
        self.cubic = Akima1DInterpolator(self.at, hs).c.T.tolist()
        self.braking = braking
        self.knots = xs
        self.wish = [cruise if p[2] is None or p[2] == 0 else p[2] / 3.6 for p in points[:-1]]
        # Speed at each knot from which everything further on can still be slowed down to.
        self.reach = [0.0 if points[-1][2] == 0 else self.wish[-1]]
        for i in range(len(xs) - 2, -1, -1):
            slowed = math.sqrt(self.reach[0] ** 2 + 2 * braking * (xs[i + 1] - xs[i]))
            here = min(self.wish[i], self.wish[i - 1] if i > 0 else self.wish[i])
            self.reach.insert(0, 0.0 if i > 0 and points[i][2] == 0 else min(here, slowed))
        self.stops = [(p[0], p[3]) for p in points if p[2] == 0]

    @staticmethod
    def averaged(h, half):
        n = len(h)
        return [numpy.mean(h[i - k : i + k + 1]) for i in range(n) for k in [min(half, i, n - 1 - i)]]

    def piece(self, x):
        x = min(max(x, 0.0), self.length)
        i = min(max(bisect.bisect_right(self.at, x) - 1, 0), len(self.cubic) - 1)
        return x - self.at[i], self.cubic[i]

    def sine(self, x):
        s, (a, b, c, _) = self.piece(x)
        return (3 * a * s + 2 * b) * s + c

    def height(self, x):
        s, (a, b, c, d) = self.piece(x)
        return ((a * s + b) * s + c) * s + d

    def allowed(self, x):
        """Speed, and how it changes in time where the rider slows down ahead of something."""
        x = min(max(x, 0.0), self.length)
        i = min(max(bisect.bisect_right(self.knots, x) - 1, 0), len(self.wish) - 1)
        square = self.reach[i + 1] ** 2 + 2 * self.braking * (self.knots[i + 1] - x)
        if square < self.wish[i] ** 2:
            return math.sqrt(max(square, 0.0)), -self.braking
        return self.wish[i], 0.0


class Board:
    """A kit's numbers as typed, brought to what the equations need."""

    def __init__(self, kit):
        motor, wheel, pack, controller, task = (
            kit[k] for k in ("motor", "wheel", "pack", "controller", "task"))
        self.n = kit["motors"]
        self.gear = kit["wheelTeeth"] / kit["driveTeeth"] / (wheel["diameterMm"] / 2000)  # ω/v, and F/M
        self.eta = task["beltEfficiencyPercent"] / 100

        self.kt = 60 / (2 * math.pi * motor["kvRpmPerV"])
        per_lead = 1 if motor["resistanceIs"] == "LINE_TO_LINE" else 2
        self.ohm_20 = per_lead * motor["resistanceOhm"] / (
            1 + COPPER_PER_K * (or_rule(motor["resistanceAtC"], 20) - COPPER_AT_C))
        rpm = or_rule(motor["noLoadAtRpm"], motor["kvRpmPerV"] * pack["cellsInSeries"] * pack["cellVoltageV"])
        growth = or_rule(motor["noLoadGrowthPercent"], 50) / 100
        self.i_h = motor["noLoadCurrentA"] * (1 - growth)
        self.i_e = motor["noLoadCurrentA"] * growth / (rpm * 2 * math.pi / 60)

        d, l = motor["canDiameterMm"] / 1000, motor["canLengthMm"] / 1000
        side, end, mass = math.pi * d * l, math.pi * d * d / 4, motor["massKg"]
        self.c_w = or_rule(motor["windingJPerK"], 0.4 * mass * 420)
        self.c_c = or_rule(motor["caseJPerK"], 0.6 * mass * 480)
        self.r_wc = or_rule(motor["windingToCaseKPerW"], 0.0075 / side)
        self.r_ca = or_rule(motor["caseToAirKPerW"], 1 / (20 * (side + end)))
        self.can, self.area = d, side + end
        self.flow = or_rule(motor["airflowPercent"], 15 if kit["covered"] else 50) / 100
        hottest = or_rule(motor["mostWindingC"], 120)

        self.air_c = or_rule(task["airC"], 20)
        cell_c = or_rule(task["cellC"], self.air_c)
        kelvin = 273.15
        warmth = 1 / (cell_c + kelvin) - 1 / (or_rule(pack["resistanceAtC"], 20) + kelvin)
        self.r_p = pack["resistanceOhm"] * math.exp(kit["activationK"] * warmth)
        self.coulombs = pack["capacityAh"] * 3600
        self.curve_q, self.curve_u = zip(*kit["curve"])
        self.cells = pack["cellsInSeries"]
        self.full = self.cells * pack["fullCellV"]
        self.gives = pack["dischargeCurrentA"]
        self.takes = 0 if cell_c < or_rule(pack["leastChargeC"], 0) else pack["chargeCurrentA"]

        direct = 1 if controller["currentIs"] == "DIRECT" else math.sqrt(3) / 2
        self.i_drive = direct * controller["driveCurrentA"]
        self.i_brake = direct * controller["brakeCurrentA"]
        self.i_battery = self.n * controller["batteryCurrentA"]
        self.i_charge = self.n * or_rule(controller["chargeCurrentA"], controller["batteryCurrentA"])
        self.duty = controller["dutyPercent"] / 100
        empty = self.cells * pack["emptyCellV"]
        self.u_from = or_rule(controller["cutBackFromV"], empty + 0.2 * self.cells)
        self.u_to = or_rule(controller["cutBackToV"], empty)
        self.t_from = or_rule(controller["windingCutBackFromC"], hottest - 20)
        self.t_to = or_rule(controller["windingCutBackToC"], hottest)
        self.fastest = controller["electricalSpeedRpm"] / motor["polePairs"] * 2 * math.pi / 60

        self.m = task["allUpMassKg"]
        rotor = or_rule(motor["rotorKgM2"], mass / 2 * 0.8 * (d / 2) ** 2)
        self.m_e = self.m + 4 * 0.6 * wheel["massKg"] + self.n * rotor * self.gear**2
        self.c = task["rollingPercent"] / 100
        self.half_rho_a = task["airDensityKgM3"] * task["dragAreaM2"] / 2
        self.f_b = or_rule(task["bearingDragN"], 1)
        self.wind = or_rule(task["headWindMps"], 0)
        self.mu = or_rule(task["gripShare"], 0.6)
        self.driven = or_rule(task["drivenPercent"], 50) / 100
        self.driven_braking = or_rule(task["drivenBrakingPercent"], 55) / 100
        self.q = or_rule(task["chargePercent"], 95) / 100
        self.cruise = task["cruiseKmh"] / 3.6

    def open_v(self, q):
        us, qs = self.curve_u, self.curve_q
        i = min(max(bisect.bisect_left(qs, q), 1), len(qs) - 1)
        share = min(max((q - qs[i - 1]) / (qs[i] - qs[i - 1]), 0.0), 1.0)
        return self.cells * (us[i - 1] + share * (us[i] - us[i - 1]))

    def ohm(self, t):
        return self.ohm_20 * (1 + COPPER_PER_K * (t - COPPER_AT_C))

    def away(self, v, omega):
        """G: what leaves the can for each kelvin above the air."""
        pr, d = AIR_PRANDTL, self.can
        re = self.flow * abs(v + self.wind) * d / AIR_VISCOSITY
        blown = 0.0 if re == 0 else 0.3 + 0.62 * re**0.5 * pr ** (1 / 3) / (1 + (0.4 / pr) ** (2 / 3)) ** 0.25 * (
            1 + (re / 282000) ** (5 / 8)) ** 0.8
        turning = 0.133 * (abs(omega) * d * d / 2 / AIR_VISCOSITY) ** (2 / 3) * pr ** (1 / 3)
        return 1 / self.r_ca + self.area * AIR_CONDUCTIVITY / d * math.hypot(blown, turning)

    def motor_current(self, push, grip, omega, q, t_w):
        """Direct current of one motor for a wished push, and what decides it."""
        e, r, u0, n = self.kt * omega, self.ohm(t_w), self.open_v(q), self.n
        loss = self.i_h + self.i_e * omega if omega >= 0 else -self.i_h + self.i_e * omega
        held = min(max(push, -grip), grip)
        torque = held / self.gear / n
        current = (torque / self.eta if torque > 0 else torque * self.eta) / self.kt + loss
        why = "wish" if held == push else "grip"
        left = min(max((self.t_to - t_w) / (self.t_to - self.t_from), 0.0), 1.0)

        def for_power(watt):
            return (-e + math.sqrt(e * e + 4 * r * watt / n)) / (2 * r)

        # Driving: back-EMF and duty, phase current, electrical speed; then the pack's side.
        most, most_why = min(
            (self.i_drive * left, "heat" if left < 1 else "phase"),
            ((self.duty * u0 - e) / (r + n * self.duty**2 * self.r_p), "duty"))
        if most > 0:
            fade = (1 - omega / self.fastest) / 0.02
            if fade < 1:
                most, most_why = most * max(fade, 0.0), "electrical speed"
        else:
            flows_back = (e - u0) / (r + n * self.r_p)
            most, most_why = (-flows_back, "over-run") if flows_back > 0 else (0.0, most_why)
        if current > most:
            current, why = most, most_why
            if why == "over-run":
                return current, why
        if current > 0:
            # Linear from u_from to u_to at the loaded voltage: I = I_b·(u0 − R·I − u_to)/(u_from − u_to)
            sagging = self.i_battery * (u0 - self.u_to) / (self.u_from - self.u_to + self.r_p * self.i_battery)
            amps, amps_why = min(
                (self.i_battery, "battery"), (self.gives, "pack"), (max(sagging, 0.0), "low voltage"),
                (u0 / 2 / self.r_p, "pack"))
            bound = for_power(amps * (u0 - amps * self.r_p))
            if current > bound:
                current, why = bound, amps_why
        elif current < 0:
            room = max(min(self.takes, (self.full - u0) / self.r_p), 0.0)
            amps, amps_why = min((self.i_charge, "charge"), (room, "full"))
            bounds = [(-self.i_brake * left, "heat" if left < 1 else "brake")]
            watt = amps * (u0 + amps * self.r_p)
            if e > 0 and e * e >= 4 * r * watt / n:
                bounds.append((for_power(-watt), amps_why))
            bound, bound_why = max(bounds)
            bound = min(bound, most)
            if current < bound:
                current, why = bound, bound_why
        return current, why


class Ride:
    def __init__(self, ride):
        self.board = Board(ride["kit"])
        self.rider = ride["rider"]
        self.profile = Profile(ride["route"], ride["smoothM"], self.board.cruise, self.rider["brakingMps2"])
        self.calls = 0

    def moment(self, x, v, q, t_w):
        b, rider = self.board, self.rider
        sine = self.profile.sine(x)
        cosine = math.sqrt(1 - sine * sine)
        w = v + b.wind
        rolling, air = b.c * b.m * G * cosine, b.half_rho_a * w * abs(w)
        load = b.m * G * sine + rolling + air + b.f_b
        allowed, ahead = self.profile.allowed(x)
        falls = ahead * v / allowed if allowed > 0 else ahead
        a = min(max((allowed - v) / rider["settleS"] + falls, -2 * rider["brakingMps2"]), rider["speedingMps2"])
        push = load + b.m_e * a
        share = b.driven_braking if push < 0 else b.driven
        omega = v * b.gear
        current, why = b.motor_current(push, b.mu * share * b.m * G * cosine, omega, q, t_w)
        return omega, current, why, load, rolling, air

    def slopes(self, t, y):
        self.calls += 1
        b = self.board
        x, v, q, t_w, t_c = y[:5].tolist()
        omega, current, _, load, rolling, air = self.moment(x, v, q, t_w)
        turned = b.i_h + b.i_e * omega if omega >= 0 else -b.i_h + b.i_e * omega
        torque = b.kt * (current - turned)
        force = b.n * torque * b.gear * (b.eta if torque > 0 else 1 / b.eta)
        net = force - load
        if v <= 0 and net < 0:  # at rest friction holds and never pushes
            net = min(0.0, net + 2 * (rolling + b.f_b))
        r = b.ohm(t_w)
        u0 = b.open_v(q)
        watt = b.n * (b.kt * omega * current + current * current * r)
        under = u0 * u0 - 4 * b.r_p * watt  # below zero only in a trial step far off, which NaN makes the solver refuse
        amps = 2 * watt / (u0 + math.sqrt(under)) if under >= 0 else math.nan
        copper, iron = current * current * r, b.kt * turned * omega
        across = (t_w - t_c) / b.r_wc
        return [
            v, net / b.m_e, -amps / b.coulombs, (copper + iron - across) / b.c_w,
            (across - b.away(v, omega) * (t_c - b.air_c)) / b.c_c, watt, b.n * copper, air * v]

    def run(self, method, relative):
        b = self.board
        y = numpy.array([0, 0, b.q, b.air_c, b.air_c, 0, 0, 0], dtype=float)
        t, speeds, hottest, top = 0.0, [], b.air_c, 0.0

        def terminal(event):
            event.terminal, event.direction = True, -1
            return event

        def crawling(t, y):
            slow = y[0] > 1 and self.moment(y[0], y[1], y[2], y[3])[2] == "low voltage"
            return y[1] - 0.3 if slow else 1.0

        def standing(t, y):
            return y[1] - 0.001 if y[0] > began + 0.05 else 1.0

        ends = [
            ("STALLS", terminal(lambda t, y: y[1] + 0.02)), ("EMPTY", terminal(lambda t, y: y[2])),
            ("EMPTY", terminal(crawling)), ("STALLS", terminal(standing))]
        for stop, wait in self.profile.stops + [(math.inf, 0)]:
            goal, began = min(stop - HALT_M, self.profile.length), y[0]
            leg = solve_ivp(
                self.slopes, (t, 86400), y, method, dense_output=True, rtol=relative, atol=relative * SIZES,
                first_step=0.01, max_step=2,
                events=[terminal(lambda t, y, goal=goal: goal - y[0])] + [e for _, e in ends])
            beat = numpy.arange(math.ceil(t * 10), math.floor(leg.t[-1] * 10) + 1) / 10
            seen = leg.sol(beat)
            speeds += [[float(s), float(v)] for s, v in zip(beat, seen[1])]
            top = max(top, float(seen[1].max()))
            hottest = max(hottest, float(seen[3].max()), float(leg.y[3].max()))
            t, y = float(leg.t[-1]), leg.y[:, -1].copy()
            ended = [i for i, found in enumerate(leg.t_events) if len(found)]
            if leg.status != 1 or ended[0] > 0:
                return self.result(ends[ended[0] - 1][0] if ended else "TOO_LONG", t, y, top, hottest, speeds)
            if stop <= self.profile.length:
                y[0], y[1] = stop, 0.0
            if stop >= self.profile.length:
                return self.result("ARRIVED", t, y, top, hottest, speeds)
            y[3:5] = self.cooled(y[3:5], wait)
            t += wait
        raise AssertionError("no end")

    def cooled(self, warm, wait):
        from scipy.linalg import expm
        b = self.board
        away = b.away(0.0, 0.0)
        a = numpy.array([
            [-1 / b.r_wc / b.c_w, 1 / b.r_wc / b.c_w],
            [1 / b.r_wc / b.c_c, -(1 / b.r_wc + away) / b.c_c]])
        return b.air_c + expm(a * wait) @ (warm - b.air_c)

    def result(self, end, t, y, top, hottest, speeds):
        names = ("distanceM", "speedMps", "charge", "windingC", "caseC", "usedJ", "copperJ", "airJ")
        return {
            "end": end, "timeS": t, "topMps": top, "hottestC": hottest, "calls": self.calls,
            **dict(zip(names, map(float, y))), "speeds": speeds}


def main():
    method = sys.argv[2] if len(sys.argv) > 2 else "DOP853"
    relative = float(sys.argv[3]) if len(sys.argv) > 3 else 1e-10
    with open(sys.argv[1]) as file:
        rides = json.load(file)[: int(sys.argv[4]) if len(sys.argv) > 4 else None]
    results = []
    for ride in rides:
        begin = time.process_time()
        result = Ride(ride).run(method, relative)
        results.append({"name": ride["name"], "seconds": time.process_time() - begin, **result})
    json.dump(results, sys.stdout)


main()
