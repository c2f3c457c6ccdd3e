#!/usr/bin/env bash
# Times abut beside a bare reader of workbooks and the stock OPA command, and
# prints a table of ratios: bash ci/bench.sh [-runs 5] [-lines 1000,2000,4000] [-books 500]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
exec go run ./testdata/bench "$@"
