#!/usr/bin/env python3
"""Reference values for the smoother and the sampler in sim/math/kalman: python3 kalman.py > kalman.json (numpy; statsmodels for a second opinion).

1. A linear Gaussian model of three states with uneven steps and missing measurements, as one joint normal distribution of all states at all
   events: posterior mean and covariance by the formula for conditioned normals, no recursion. statsmodels' general state-space smoother gives
   the same to 1e-9 (checked here where it is installed).
2. A model that switches between two regimes over seven events, by adding up all 128 paths of regimes, each its own joint normal.
"""
import itertools
import json
import sys

import numpy as np

dts = [1.0, 0.4, 2.0, 1.0, 3.5, 1.0, 0.1, 1.0, 1.0, 5.0, 1.0]
values = [0.3, None, 2.9, 5.2, None, 14.0, 15.7, 15.4, None, 18.3, 27.9, 29.2]
N, n = len(values), 3


def step(dt):
    keep = np.exp(-dt / 8)
    F = np.array([[1, dt, 0], [0, 1, 0], [0, 0, keep]])
    Q = np.zeros((3, 3))
    Q[:2, :2] = 0.6 * np.array([[dt**3 / 3, dt**2 / 2], [dt**2 / 2, dt]])
    Q[2, 2] = 4 * (1 - keep**2)
    return F, Q


P0, m0 = np.diag([9.0, 4.0, 4.0]), np.array([0.0, 2.0, 0.0])
H, R = np.array([1.0, 0.0, 1.0]), 0.25


def joint(F, Q, c, m0, P0):
    """Mean and covariance of all states stacked."""
    N, n = len(F) + 1, len(m0)
    mean, cov = np.zeros(N * n), np.zeros((N * n, N * n))
    mean[:n], cov[:n, :n] = m0, P0
    for k in range(1, N):
        a, b, d = (k - 1) * n, k * n, (k + 1) * n
        mean[b:d] = F[k - 1] @ mean[a:b] + c[k - 1]
        cov[b:d, :b] = F[k - 1] @ cov[a:b, :b]
        cov[:b, b:d] = cov[b:d, :b].T
        cov[b:d, b:d] = F[k - 1] @ cov[a:b, a:b] @ F[k - 1].T + Q[k - 1]
    return mean, cov


def conditioned(mean, cov, rows, variances, z):
    S = rows @ cov @ rows.T + np.diag(variances)
    K = np.linalg.solve(S, rows @ cov).T
    r = z - rows @ mean
    log = -0.5 * (r @ np.linalg.solve(S, r) + np.linalg.slogdet(2 * np.pi * S)[1])
    return mean + K @ r, cov - K @ rows @ cov, log


steps = [step(dt) for dt in dts]
mean, cov = joint([F for F, _ in steps], [Q for _, Q in steps], [np.zeros(n)] * (N - 1), m0, P0)
seen = [k for k in range(N) if values[k] is not None]
rows = np.zeros((len(seen), N * n))
for i, k in enumerate(seen):
    rows[i, k * n : (k + 1) * n] = H
mean, cov, log = conditioned(mean, cov, rows, [R] * len(seen), np.array([values[k] for k in seen]))

try:
    from statsmodels.tsa.statespace.kalman_smoother import KalmanSmoother

    model = KalmanSmoother(k_endog=1, k_states=n, k_posdef=n, initialization="known", constant=m0, stationary_cov=P0)
    model.bind(np.array([[np.nan if v is None else v] for v in values]).T.copy(order="F"))
    model["design"], model["obs_cov"], model["selection"] = H.reshape(1, n), np.array([[R]]), np.eye(n)
    model["transition"] = np.stack([F for F, _ in steps] + [np.eye(n)], axis=2)
    model["state_cov"] = np.stack([Q for _, Q in steps] + [np.eye(n)], axis=2)
    found = model.smooth()
    assert np.allclose(found.smoothed_state.T.ravel(), mean, atol=1e-9)
    for k in range(N):
        assert np.allclose(found.smoothed_state_cov[:, :, k], cov[k * n : (k + 1) * n, k * n : (k + 1) * n], atol=1e-9)
    print("statsmodels agrees", file=sys.stderr)
except ImportError:
    print("statsmodels is not installed", file=sys.stderr)

# Two regimes of one state: restless (0) and at rest (1), which puts the state to nought.
zs = [0.9, 1.6, 0.4, 0.05, -0.1, 0.2, 1.4]
T, stay = len(zs), np.array([[0.8, 0.2], [0.3, 0.7]])
total, rest, state = 0.0, np.zeros(T), np.zeros(T)
for path in itertools.product([0, 1], repeat=T):
    weight = 0.5 * np.prod([stay[path[k - 1], path[k]] for k in range(1, T)])
    F = [np.array([[0.95 if path[k] == 0 else 0.0]]) for k in range(1, T)]
    Q = [np.array([[0.5 if path[k] == 0 else 0.0001]]) for k in range(1, T)]
    m, P = joint(F, Q, [np.zeros(1)] * (T - 1), np.zeros(1), np.array([[1.0]]))
    m, P, l = conditioned(m, P, np.eye(T), [0.04] * T, np.array(zs))
    w = weight * np.exp(l)
    total += w
    rest += w * np.array(path)
    state += w * m

json.dump(
    {
        "linear": {"dt": dts, "value": values, "mean": mean.tolist(), "covariance": cov.ravel().tolist(), "logLikelihood": log},
        "switching": {"value": zs, "rest": (rest / total).tolist(), "state": (state / total).tolist(), "logLikelihood": np.log(total)},
    },
    sys.stdout,
)
print()
