#!/usr/bin/env bash
# Times whole commands, start-up included: the middle of N runs of each, wall and processor seconds. Usage: benchmarks/whole-commands.sh [N]
set -euo pipefail
root=$(cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.." && pwd)
runs=${1:-9}
place=$(mktemp -d)
trap 'rm -rf "$place"' EXIT
export CROSSMEMBER_DATA=$place/records
cd "$place"
echo '{"roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":4.1,"gearRatio":1}' >speed.json
"$root/crossmember" demo --out . >/dev/null
"$root/crossmember" import packhorse.json >/dev/null

middle() { sort -n | sed -n "$(((runs + 1) / 2))p"; }

TIMEFORMAT='%R %U %S'
row() {
  local figures
  figures=$(for ((i = 0; i < runs; i++)); do { time "$root/crossmember" "$@" >/dev/null || true; } 2>&1; done | awk '{ print $1, $2 + $3 }')
  printf '%-58s %6s s wall %6s s processor\n' "$*" "$(cut -d' ' -f1 <<<"$figures" | middle)" "$(cut -d' ' -f2 <<<"$figures" | middle)"
}

row calc run driveline.engine-speed speed.json
row calc list --json
row check packhorse.json --json
row check packhorse --json
row ripple packhorse.json --from as-found --to working --json
row verify
