#!/bin/sh
# Times this engine against general solvers on one machine in one run.
# Needs Go, and Debian's python3 with numpy and scipy; ccx if it is there.
set -eu
cd "$(dirname "$0")/.."
PYTHON=${PYTHON:-/usr/bin/python3}
"$PYTHON" -c 'import numpy, scipy' || { echo "numpy or scipy missing: apt-get install python3-scipy" >&2; exit 1; }
timings=$(mktemp)
trap 'rm -f "$timings"' EXIT

echo "# $(date -u +%Y-%m-%dT%H:%MZ), $(sed -n 's/^model name[^:]*: //p' /proc/cpuinfo | head -1), $(nproc) cores, load $(cut -d' ' -f1-3 /proc/loadavg), $(go version | cut -d' ' -f3)"
# Short runs on both sides, so that the least of them is one nobody disturbed.
GOMAXPROCS=1 go test -run '^$' -bench 'ElasticTwoPeriods|KinkedLimb' -benchtime 100x -count 100 ./engine/swing ./engine/frame >"$timings"
# Here the second core is part of the question.
GOMAXPROCS=1 go test -run '^$' -bench PlainMonteCarloOfTheCase -benchtime 20x -count 20 ./work >>"$timings"
GOMAXPROCS=2 go test -run '^$' -bench PlainMonteCarloOfTheCase -benchtime 20x -count 20 ./work >>"$timings"
# A core type or a cache size set for OpenBLAS would hold NumPy back.
env -u OPENBLAS_CORETYPE -u OPENBLAS_L2_SIZE OPENBLAS_NUM_THREADS=1 OMP_NUM_THREADS=1 "$PYTHON" -B bench/compare.py "$timings"
