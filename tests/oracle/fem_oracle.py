"""Writes fem_cases.json: beams solved by a general finite element library, for the tests of members::beam.

    python -m pip install -r requirements_fem.txt
    python fem_oracle.py > fem_cases.json

The beams are drawn at random from a fixed seed. Each is solved by scikit-fem with cubic Hermite elements, which give a
beam's deflection and slope at their nodes without any error of the mesh; a node stands wherever a load or a support starts,
ends or acts. Reactions are what the assembled stiffness leaves over at the held places.

Units: inches, pounds, inch-pounds; distributed loads in pounds per foot. Loads and deflections are positive down, reactions
positive up, couples positive clockwise.
"""

import json
import random

import numpy as np
from skfem import Basis, BilinearForm, LinearForm, MeshLine, condense, solve
from skfem.element import ElementLineHermite
from skfem.helpers import dd, ddot

SEED = 20240229
CASES = 200


def draw(rng, index):
    """A beam of one to five spans on simple supports, with or without overhangs, and its loads."""
    spans = index % 5 + 1
    left, right = rng.choice([0, 0, rng.randint(6, 90)]), rng.choice([0, 0, rng.randint(6, 90)])
    supports = [left]
    for _ in range(spans):
        supports.append(supports[-1] + rng.randint(36, 260))
    length = supports[-1] + right
    beam = {"length": length, "ei": rng.randint(20, 4000) * 100_000, "supports": supports}
    return beam, [draw_load(rng, length) for _ in range(rng.randint(1, 6))]


def draw_load(rng, length):
    kind = rng.choice(["point", "uniform", "linear", "linear", "couple"])
    if kind == "point":
        return {"kind": "point", "at": rng.randint(0, length), "force": rng.randint(-500, 3000)}
    if kind == "couple":
        return {"kind": "couple", "at": rng.randint(0, length), "moment": rng.randint(-12000, 12000)}
    start = rng.randint(0, length - 1)
    end = rng.randint(start + 1, length)
    first = rng.randint(-60, 600)
    last = first if kind == "uniform" else rng.randint(-60, 600)
    return {"kind": "distributed", "from": start, "to": end, "start": first, "end": last}


def solve_case(beam, loads):
    places = {0, beam["length"], *beam["supports"]}
    for load in loads:
        places.update([load["at"]] if "at" in load else [load["from"], load["to"]])
    nodes = np.array(sorted(places), dtype=float)
    basis = Basis(MeshLine(nodes), ElementLineHermite())

    stiffness = BilinearForm(lambda u, v, w: beam["ei"] * ddot(dd(u), dd(v))).assemble(basis)
    force = np.zeros(stiffness.shape[0])
    for load in (load for load in loads if load["kind"] == "distributed"):

        def intensity(x, load=load):
            share = (x - load["from"]) / (load["to"] - load["from"])
            inside = (x > load["from"]) & (x < load["to"])
            return np.where(inside, (load["start"] + share * (load["end"] - load["start"])) / 12.0, 0.0)

        force += LinearForm(lambda v, w: intensity(w.x[0]) * v).assemble(basis)
    # Two unknowns stand at each node: deflection, then slope.
    dofs = {place: basis.nodal_dofs[:, index] for index, place in enumerate(nodes)}
    for load in loads:
        if load["kind"] == "point":
            force[dofs[load["at"]][0]] += load["force"]
        elif load["kind"] == "couple":
            force[dofs[load["at"]][1]] += load["moment"]
    held = np.array([dofs[at][0] for at in beam["supports"]])
    found = solve(*condense(stiffness, force, D=held))
    left_over = force - stiffness @ found
    return {
        "beam": beam,
        "loads": loads,
        "reactions": [float(left_over[dofs[at][0]]) for at in beam["supports"]],
        "nodes": [
            {"at": float(place), "deflection": float(found[dofs[place][0]]), "slope": float(found[dofs[place][1]])}
            for place in nodes
        ],
    }


def main():
    rng = random.Random(SEED)
    cases = [solve_case(*draw(rng, index)) for index in range(CASES)]
    print(json.dumps({"about": "written by fem_oracle.py", "cases": cases}, separators=(",", ":")))


main()
