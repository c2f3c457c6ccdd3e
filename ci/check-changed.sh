#!/usr/bin/env bash
# Checks the schedules that a change touches, and no others.
#
#   bash check-changed.sh BASE [FOLDER]
#
# BASE is the commit or branch that the change is made against. The reports go
# to FOLDER (abut-report): report.md for a comment on the change, report.html to
# read and keep, report.sarif, report.xml (JUnit) and report.json for machines.
# Where abut.yaml is changed, every schedule is checked, since settings, waivers
# and an office's rules speak of all of them.
#
# ABUT_SCHEDULES says which files are schedules, as git writes patterns:
#   ABUT_SCHEDULES='schedules/*.xlsx schedules/*.csv'
#
# Ends as abut does: 0 nothing to stop at, 1 findings, 2 a file or a setting
# that could not be read.
set -euo pipefail

base=${1:?name the commit or branch that the change is made against}
out=${2:-abut-report}
command -v abut >/dev/null || { echo "check-changed.sh: abut is not on the PATH" >&2; exit 2; }
git rev-parse --quiet --verify "$base^{commit}" >/dev/null ||
	{ echo "check-changed.sh: there is no commit $base here; fetch the whole history" >&2; exit 2; }

read -ra patterns <<<"${ABUT_SCHEDULES:-*.xlsx *.xlsm *.xltx}"
cd "$(git rev-parse --show-toplevel)"
mkdir -p "$out"

list() {
	if git diff --quiet "$base...HEAD" -- abut.yaml; then
		git diff -z --name-only --diff-filter=d "$base...HEAD" -- "${patterns[@]}"
	else
		git ls-files -z -- "${patterns[@]}"
	fi
}
files=()
while IFS= read -r -d '' file; do
	case ${file##*/} in '~$'*) continue ;; esac # the lock of an open workbook
	files+=("$file")
done < <(list)

if [ "${#files[@]}" = 0 ]; then
	echo "No schedule is touched by this change." | tee "$out/report.md"
	exit 0
fi
abut check -o "$out/report.md" -o "$out/report.html" -o "$out/report.sarif" \
	-o "$out/report.xml" -o "$out/report.json" -- "${files[@]}"
