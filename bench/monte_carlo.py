"""Plain Monte Carlo of the reliability case rel_limb_01, vectorised with NumPy:
chunks that stay in a cache, arrays that are used again, the quickest of NumPy's
generators."""

import numpy as np


def lognormal(mean, cov):
    sigma = np.sqrt(np.log1p(cov * cov))
    return np.log(mean) - sigma * sigma / 2, sigma


class Sampler:
    """Counts failures in chunks of one size."""

    def __init__(self, case, chunk, seed=1):
        self.inputs, self.chunk = case["inputs"], chunk
        self.random = np.random.Generator(np.random.SFC64(seed))
        self.z = np.empty((6, chunk))
        self.work = np.empty(chunk)

    def failures(self):
        x, c, w = self.inputs, self.z, self.work
        self.random.standard_normal(out=c)
        for row, name in ((0, "MOR"), (2, "m"), (4, "DAF")):
            mean = x.get(f"{name}_mean_Pa", x.get(f"{name}_mean_kg", x.get(f"{name}_mean")))
            mu, sigma = lognormal(mean, x[f"{name}_cov"])
            c[row] *= sigma
            c[row] += mu
            np.exp(c[row], out=c[row])
        strength, d, mass, theta, dynamic, arm = c
        d *= x["d_cov"] * x["d_mean_m"]
        d += x["d_mean_m"]
        theta *= np.radians(x["theta_sd_deg"])
        theta += np.radians(x["theta_mean_deg"])
        arm *= x["a_sd_m"]
        arm += x["a_mean_m"]
        np.cos(theta, out=theta)
        theta *= -2
        theta += 3
        mass *= x["g"]
        mass *= theta
        mass *= dynamic
        mass *= arm
        np.multiply(d, np.pi / 32, out=w)
        w *= strength
        w -= x["M_self_Nm"] / x["d_mean_m"] ** 2
        w *= d
        w *= d
        return np.count_nonzero(w < mass)


def run(case, samples, chunk):
    """Returns the share of failures among about so many samples."""
    sampler = Sampler(case, chunk)
    chunks = samples // chunk
    return sum(sampler.failures() for _ in range(chunks)) / (chunks * chunk), chunks * chunk
