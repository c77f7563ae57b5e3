# Readings of a gauge and a decelerometer on brakes with one thing wrong, from the parts' own physics: nothing of the program is used.
# Run: python3 gauge-readings.py   (plain Python 3, no packages). Prints the lines that GaugeReadings.cs holds.
from math import pi


def booster(f_in, difference, dead):
    """Output of the booster in N: air is let in step by step until the reaction balances the valve, or no difference is left."""
    area, efficiency, cut_in, jump_in, gain, spring = 0.0400, 0.95, 90.0, 350.0, 5.0, 200.0
    if dead:
        return max(0.0, f_in - spring)
    if f_in <= cut_in:
        return 0.0
    wanted = jump_in + gain * (f_in - cut_in)  # what the reaction disc asks for
    low, high = 0.0, difference
    for _ in range(80):  # chamber difference at which the valve laps
        mid = (low + high) / 2
        if f_in + mid * area * efficiency < wanted:
            low = mid
        else:
            high = mid
    return f_in + low * area * efficiency


def brakes(force, dead=False, efficiency=0.90, bore=0.0254, vacuum=70e3, no_booster=False, front_mu=0.38, rear_factor=2.30, knee=3.5e6, front_open=1.0):
    f_out = booster(force * 4.2 * efficiency, vacuum, dead or no_booster)
    line = f_out * 0.97 / (pi / 4 * bore ** 2)
    front = line * front_open
    rear = line if line < knee else knee + 0.35 * (line - knee)
    torque_front = 2 * front_mu * front * 2 * pi / 4 * 0.048 ** 2 * 0.125  # of one wheel
    torque_rear = rear_factor * max(0.0, rear - 0.40e6) * pi / 4 * 0.0254 ** 2 * 0.127
    return front, rear, 2 * (torque_front + torque_rear) / 0.375 / (2100 * 9.80665)


class Noise:
    """Park and Miller's minimal standard generator, even between -1 and 1."""
    def __init__(self, seed):
        self.state = seed

    def __call__(self):
        self.state = self.state * 16807 % 2147483647
        return 2 * self.state / 2147483647 - 1


def readings(name, seed, held=0.0, **wrong):
    noise = Noise(seed)
    live, dead, stops = (40, 80, 120, 160, 220, 300, 400), (150, 250, 350, 500), (60, 100, 140, 200)

    def curve(points):
        return "[" + ",".join(f'["{f} N","{p / 1e6:.3f} MPa"]' for f, p in points) + "]"
    front = [(f, brakes(f, **wrong)[0] + 0.07e6 * noise()) for f in live]
    rear = [(0, held)] + [(f, max(held, brakes(f, **wrong)[1]) + 0.07e6 * noise()) for f in live]
    off = [(f, brakes(f, dead=True, **wrong)[0] + 0.07e6 * noise()) for f in dead]
    stop = "[" + ",".join(f'["{f} N",{brakes(f, **wrong)[2] + 0.007 * noise():.4f}]' for f in stops) + "]"
    print(f'{name}|{curve(front)}|{curve(rear)}|{curve(off)}|{stop}')


readings("right", 11)
readings("pedal-friction", 12, efficiency=0.74)
readings("bore", 13, bore=0.028575)
readings("low-vacuum", 14, vacuum=45e3)
readings("dead-booster", 15, no_booster=True)
readings("lining-friction", 16, front_mu=0.38 * 0.75, rear_factor=2.30 * 0.75)
readings("front-lining", 17, front_mu=0.38 * 0.7)
readings("valve-knee", 18, knee=2.4e6)
readings("held-rear", 19, held=0.35e6)
readings("front-blocked", 20, front_open=0.0)
