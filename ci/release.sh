#!/usr/bin/env bash
# Builds abut for the usual machines: bash ci/release.sh FOLDER [OS/ARCH...]
# The same commit and the same Go give the same bytes; SHA256SUMS tells them.
set -euo pipefail

folder=${1:?name the folder to write to}
shift
[ $# -gt 0 ] || set -- linux/amd64 linux/arm64 darwin/amd64 darwin/arm64 windows/amd64 windows/arm64
mkdir -p "$folder"
folder=$(cd "$folder" && pwd)
cd "$(dirname "${BASH_SOURCE[0]}")/.."
for target in "$@"; do
	name=abut-${target/\//-}
	case $target in windows/*) name+=.exe ;; esac
	CGO_ENABLED=0 GOOS=${target%/*} GOARCH=${target#*/} go build -trimpath -ldflags "-s -w" -o "$folder/$name" ./cmd/abut
done
cd "$folder"
if command -v sha256sum >/dev/null; then sha256sum abut-* >SHA256SUMS; else shasum -a 256 abut-* >SHA256SUMS; fi
