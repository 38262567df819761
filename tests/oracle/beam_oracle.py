"""Writes beam_cases.json: beams solved exactly by a general mathematics library, for the tests of members::beam.

    python -m pip install -r requirements.txt
    python beam_oracle.py > beam_cases.json

The beams are drawn at random from a fixed seed, so a second run gives the same bytes. Each is solved by
sympy.physics.continuum_mechanics.beam in rational numbers, and rounded only when it is written, to the nearest double.
Extremes come from the real roots of the rational polynomials, to 40 digits.

Before a case is written it is checked here, exactly: forces and moments balance, the beam does not leave its supports,
and it does not turn over a fixed one.

Units: inches, pounds, inch-pounds; distributed loads in pounds per foot. Signs as in the crate: loads and deflections
are positive down, reactions positive up, couples and fixing moments positive clockwise, moments positive sagging.
The library's own signs (forces positive up, deflection positive up) are turned at its boundary only.
"""

import json
import random

from sympy import Poly, Rational, SingularityFunction, Symbol, symbols
from sympy.physics.continuum_mechanics.beam import Beam

SEED = 20180715
CASES = 80
DIGITS = 40
INCHES_PER_FOOT = 12
X = Symbol("x")


def draw_beam(rng, index):
    """A beam of one to five spans, with or without overhangs; every tenth is a cantilever on one fixed support."""
    spans = 0 if index % 10 == 9 else index % 5 + 1
    left = rng.choice([0, 0, rng.randint(2, 96)])
    right = rng.choice([0, 0, rng.randint(2, 96)])
    if spans == 0 and left == right == 0:
        right = 60
    places = [Rational(left)]
    for _ in range(spans):
        places.append(places[-1] + Rational(rng.randint(48, 480), 2))
    fixed_share = 1.0 if spans == 0 else rng.choice([0.0, 0.0, 0.3])
    return {
        "length": places[-1] + right,
        "ei": rng.randint(20, 4000) * 100_000,
        "supports": [{"at": at, "fixed": rng.random() < fixed_share} for at in places],
    }


def draw_place(rng, beam):
    """Anywhere on the half-inch marks, and now and then right on a support or at an end."""
    marks = [support["at"] for support in beam["supports"]] + [Rational(0), beam["length"]]
    return rng.choice(marks) if rng.random() < 0.2 else Rational(rng.randint(0, int(2 * beam["length"])), 2)


def draw_load(rng, beam):
    kind = rng.choice(["point", "point", "uniform", "uniform", "linear", "couple", "whole"])
    if kind == "point":
        return {"kind": "point", "at": draw_place(rng, beam), "force": rng.randint(-500, 3000)}
    if kind == "couple":
        return {"kind": "couple", "at": draw_place(rng, beam), "moment": rng.randint(-12000, 12000)}
    start, end = Rational(0), beam["length"]
    while kind != "whole":
        start, end = sorted([draw_place(rng, beam), draw_place(rng, beam)])
        if start < end:
            break
    plf = rng.randint(-100, 900)
    last = rng.choice([0, rng.randint(-100, 900)]) if kind == "linear" else plf
    return {"kind": "distributed", "from": start, "to": end, "start": plf, "end": last}


def apply(model, load):
    if load["kind"] == "point":
        model.apply_load(-load["force"], load["at"], -1)
    elif load["kind"] == "couple":
        model.apply_load(load["moment"], load["at"], -2)
    else:
        first, last = (Rational(load[key], INCHES_PER_FOOT) for key in ("start", "end"))
        model.apply_load(-first, load["from"], 0, end=load["to"])
        if first != last:
            model.apply_load(-(last - first) / (load["to"] - load["from"]), load["from"], 1, end=load["to"])


def solve(beam, loads):
    """The model of the beam, solved, and its reactions as (force up, moment clockwise)."""
    model = Beam(beam["length"], beam["ei"], 1, variable=X)
    unknowns, pairs = [], []
    for index, support in enumerate(beam["supports"]):
        force, moment = symbols(f"R{index} M{index}")
        model.apply_load(force, support["at"], -1)
        model.bc_deflection.append((support["at"], 0))
        unknowns.append(force)
        if support["fixed"]:
            model.apply_load(moment, support["at"], -2)
            model.bc_slope.append((support["at"], 0))
            unknowns.append(moment)
        pairs.append((force, moment))
    for load in loads:
        apply(model, load)
    model.solve_for_reaction_loads(*unknowns)
    found = model.reaction_loads
    return model, [(found[force], found.get(moment, Rational(0))) for force, moment in pairs]


def breaks(beam, loads):
    places = {Rational(0), beam["length"]} | {support["at"] for support in beam["supports"]}
    for load in loads:
        places |= {load[key] for key in ("at", "from", "to") if key in load}
    return sorted(places)


def between(curve, start):
    """The curve as one polynomial on the interval that begins at `start` and holds no further break."""

    def piece(_, origin, power):
        return (X - origin) ** power if origin <= start and power >= 0 else Rational(0)

    return Poly(curve.replace(SingularityFunction, piece), X)


def pieces(model, places):
    # The library's shear, moment, slope and deflection follow from forces that are positive up.
    curves = [-model.shear_force(), -model.bending_moment(), -model.slope(), -model.deflection()]
    return [(start, end, [between(curve, start) for curve in curves]) for start, end in zip(places, places[1:])]


def candidates(polynomial, start, end):
    """Its values at both ends of an interval and wherever it turns inside."""
    values = [polynomial.eval(start), polynomial.eval(end)]
    slope = polynomial.diff()
    if slope.degree() > 0:
        roots = [root.evalf(DIGITS) for root in slope.real_roots()]
        values += [polynomial.eval(root) for root in roots if start < root < end]
    return values


def extremes(parts):
    def values(which):
        return [value for start, end, curves in parts for value in candidates(curves[which], start, end)]

    shear, moment, deflection = values(0), values(1), values(3)
    return {
        "largest_shear": float(max(abs(value) for value in shear)),
        "maximum_moment": float(max(moment)),
        "minimum_moment": float(min(moment)),
        "most_down": float(max(deflection)),
        "most_up": float(min(deflection)),
    }


def section(at, side, curves):
    names = ("shear", "moment", "slope", "deflection")
    return {"at": float(at), "side": side} | {name: float(curve.eval(at)) for name, curve in zip(names, curves)}


def check(beam, loads, reactions, parts):
    """Exact, or the case is not written."""
    force = moment = Rational(0)
    for load in loads:
        if load["kind"] == "point":
            force, moment = force + load["force"], moment + load["force"] * load["at"]
        elif load["kind"] == "couple":
            moment += load["moment"]
        else:
            run = load["to"] - load["from"]
            even, rise = (Rational(value, INCHES_PER_FOOT) for value in (load["start"], load["end"] - load["start"]))
            force += (even + rise / 2) * run
            moment += even * run * (load["from"] + run / 2) + rise * run / 2 * (load["from"] + run * 2 / 3)
    for support, (up, fixing) in zip(beam["supports"], reactions):
        force, moment = force - up, moment - up * support["at"] + fixing
        for start, end, (_, _, slope, deflection) in parts:
            if support["at"] in (start, end):
                assert deflection.eval(support["at"]) == 0
                assert not support["fixed"] or slope.eval(support["at"]) == 0
    assert force == 0 and moment == 0


def case(rng, index):
    beam = draw_beam(rng, index)
    loads = [draw_load(rng, beam) for _ in range(rng.randint(1, 4))]
    model, reactions = solve(beam, loads)
    parts = pieces(model, breaks(beam, loads))
    check(beam, loads, reactions, parts)
    ends = sorted({Rational(0), beam["length"]} | {support["at"] for support in beam["supports"]})
    stretches = [
        [part for part in parts if start <= part[0] and part[1] <= end] for start, end in zip(ends, ends[1:])
    ]
    sections = []
    for start, end, curves in parts:
        inside = [("right", start)] if start in ends else []
        inside += [("right", start + (end - start) * Rational(3, 8))]
        inside += [("left", end)] if end in ends else []
        sections += [section(at, side, curves) for side, at in inside]
    return {
        "beam": beam,
        "loads": loads,
        "reactions": [{"force": float(force), "moment": float(moment)} for force, moment in reactions],
        "stretches": [extremes(stretch) for stretch in stretches],
        "sections": sections,
    }


def main():
    rng = random.Random(SEED)
    lines = [json.dumps(case(rng, index), default=float, separators=(",", ":")) for index in range(CASES)]
    print('{"library":"sympy 1.14.0","seed":%d,"cases":[' % SEED)
    print(",\n".join(lines))
    print("]}")


if __name__ == "__main__":
    main()
