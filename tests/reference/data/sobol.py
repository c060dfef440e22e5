#!/usr/bin/env python3
"""Reference points for sim/math/sobol.ts: python3 sobol.py > sobol.json (scipy 1.17.1).

Points 1, 2, 4 ... 512 of the unscrambled Sobol sequence in 32 dimensions, in plain order, as cells of 1024: every other point is made of these.
scipy gives points in Gray-code order, so that point n of its order is point n ^ (n >> 1) of the plain one.
"""
import json
import warnings

from scipy.stats import qmc

warnings.simplefilter("ignore")
points = qmc.Sobol(32, scramble=False).random(1024)
plain = {n ^ (n >> 1): row for n, row in enumerate(points)}
print(json.dumps([[round(float(x) * 1024) for x in plain[2**bit]] for bit in range(10)]))
