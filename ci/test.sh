#!/usr/bin/env bash
# Everything that must hold before a change goes in: bash ci/test.sh
# Needs Go and, for the first run, the network; takes a few minutes.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

staticcheck=honnef.co/go/tools/cmd/staticcheck@v0.8.2
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

step() { printf '\n== %s\n' "$*"; }
stop() { printf 'ci/test.sh: %s\n' "$*" >&2; exit 1; }

command -v go >/dev/null || stop "Go is not there; get it from https://go.dev/dl and run this again"

# what the tests of the recipes need and a bare machine lacks
for tool in git jq shellcheck; do
	command -v "$tool" >/dev/null && continue
	if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
		apt-get install -qq -y "$tool" >/dev/null 2>&1 || { apt-get update -qq && apt-get install -qq -y "$tool" >/dev/null; } || true
	fi
	command -v "$tool" >/dev/null || echo "$tool is not here, so the tests that need it are left out"
done

step "formatting of the Go code"
unformatted=$(gofmt -l cmd internal policies schema testdata)
[ -z "$unformatted" ] || stop "run gofmt -w on: $unformatted"

step "go vet"
go vet ./... ./testdata/demo ./testdata/bench/...

step "go.mod holds what is used and nothing else"
go mod tidy -diff || stop "run go mod tidy"

step "staticcheck"
go run "$staticcheck" ./... ./testdata/demo ./testdata/bench/...

step "known vulnerabilities"
bash ci/vulnerabilities.sh || stop "a part of the program has a known vulnerability; take a version that mends it"

step "a browser for the tests of the HTML report"
browser() { command -v chromium || command -v chromium-browser || command -v google-chrome; }
if ! browser >/dev/null && [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
	{ apt-get update && apt-get install -y --no-install-recommends chromium; } >"$scratch/apt.log" 2>&1 ||
		tail -n 3 "$scratch/apt.log"
fi
browser || echo "no Chromium here, so the report is not tried in a browser"

step "tests of Go, with the race detector"
race=-race
if [ "$(go env CGO_ENABLED)" != 1 ] || ! command -v "$(go env CC)" >/dev/null; then
	echo "no C compiler here, so the race detector is left out"
	race=
fi
slow='^(TestScripts|TestPolicies|TestPlanOfRegoTests|TestStock|TestMemory)$' # many runs of the tool and of OPA, which hold no goroutines of their own
go test $race -timeout 30m -skip "$slow" ./...

step "tests of Rego, scripts that run the tool, and OPA's own command and server"
go test -timeout 30m -run "$slow" ./cmd/abut ./internal/engine

step "the demo is what its program writes"
mkdir "$scratch/demo"
go run ./testdata/demo "$scratch/demo"
for file in "$scratch/demo"/*; do
	cmp "$file" "testdata/demo/$(basename "$file")" || stop "run go run ./testdata/demo and commit what it writes"
done

step "build, and one run on the demo"
go build -o "$scratch/abut" ./cmd/abut
code=0
"$scratch/abut" check testdata/demo/tern-landing.xlsx >"$scratch/report.txt" || code=$?
[ "$code" = 1 ] || stop "the demo has errors, so check must end with 1, not $code"
for topic in contact pairing temperature exposure; do
	grep -q "\[rule $topic-" "$scratch/report.txt" || stop "no finding of topic $topic on the demo"
done

step "binaries for other systems"
bash ci/release.sh "$scratch/release" linux/amd64 darwin/arm64 windows/amd64
(cd "$scratch/release" && ls -l abut-* && [ "$(wc -l <SHA256SUMS)" = 3 ])

step "the build of the container: static, and the same bytes in another folder"
build=$(sed -n 's/^RUN \(CGO_ENABLED=0 go build .*\)/\1/p' ci/Containerfile)
[ -n "$build" ] || stop "ci/Containerfile builds nothing"
for copy in one two; do
	mkdir -p "$scratch/$copy/src"
	sed -n '/ AS build/,/^FROM .* AS pipeline/s/^COPY //p' ci/Containerfile | while read -ra names; do
		cp -r "${names[@]:0:${#names[@]}-1}" "$scratch/$copy/src/"
	done
	(cd "$scratch/$copy/src" && bash -c "${build//\/out\//../}")
done
cmp "$scratch/one/abut" "$scratch/two/abut" || stop "two builds differ"
if command -v ldd >/dev/null && ldd "$scratch/one/abut" >/dev/null 2>&1; then stop "the binary is not static"; fi
"$scratch/one/abut" check testdata/demo/tern-landing.xlsx >"$scratch/static.txt" || [ $? = 1 ]
cmp "$scratch/static.txt" "$scratch/report.txt" || stop "the static binary reports otherwise"

step "all is well"
