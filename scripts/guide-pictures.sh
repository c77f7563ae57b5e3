#!/usr/bin/env bash
# Makes the pictures of docs/guide from the real desk with the demo shop: scripts/guide-pictures.sh [NAME...]
# Needs chromium. Each line below is one picture: its name, width and height, theme, and the page it shows.
set -euo pipefail
root=$(cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.." && pwd)
chromium=${CROSSMEMBER_CHROMIUM:-$(command -v chromium || command -v chromium-browser)}
pictures() {
  cat <<'LIST'
today        1280  900 light /
new-build    1280 1000 light /builds/new
sheet        1440 1200 light /builds/packhorse/sheet?in=working
sheet-item   1280 1100 light /builds/steading/sheet?item=tires
decisions    1440 1100 light /builds/packhorse/decisions?in=working
knock-on     1440 1250 light /builds/packhorse/decisions?in=asked&item=tires
driveline    1440 1100 light /builds/packhorse/driveline?in=asked
vehicle      1440 1250 light /builds/packhorse/vehicle?in=working
tipping      1440 1100 light /builds/packhorse/vehicle/tipping?in=working
springs      1440 1200 light /builds/packhorse/vehicle/springs?in=working
steering     1440 1300 light /builds/packhorse/vehicle/steering?in=working
recovery     1440 1200 light /builds/packhorse/vehicle/recovery?in=carried
brakes       1440 1250 light /builds/packhorse/brakes?in=carried
brake-balance 1440 1300 light /builds/packhorse/brakes/balance?in=carried&against=nothing
bench-card   1280 1250 light /bench/driveline.engine-speed?input=%7B%22roadSpeed%22%3A%2265%20mph%22%2C%22tireDiameter%22%3A%2233%20in%22%2C%22axleRatio%22%3A%224.56%22%2C%22gearRatio%22%3A%221%22%7D
printing     1000 1300 light /api/builds/packhorse/report/sheet.html?in=working
settings     1280 1000 light /settings
phone         500  900 dark  /
LIST
}

work=$(mktemp -d)
trap 'kill "${desk:-}" 2>/dev/null || true; wait 2>/dev/null || true; rm -rf "$work"' EXIT
port=5970
"$root/run" --data "$work/records" --urls "http://127.0.0.1:$port" >"$work/desk.log" 2>&1 &
desk=$!
for _ in $(seq 600); do (exec 3<>"/dev/tcp/127.0.0.1/$port") 2>/dev/null && break; sleep 0.2; done
# The first look at the lists works every vehicle out.
for _ in $(seq 60); do curl -s "http://127.0.0.1:$port/" | grep -q "worked out" || break; sleep 0.5; done

shoot() { # NAME WIDTH HEIGHT THEME PAGE
  local blink=
  [ "$4" = dark ] && blink=--blink-settings=preferredColorScheme=0
  "$chromium" --headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update \
    --disable-sync --hide-scrollbars --virtual-time-budget=4000 --user-data-dir="$work/browser" $blink --window-size="$2,$3" \
    --screenshot="$root/docs/guide/pictures/$1.png" "http://127.0.0.1:$port$5" >"$work/browser.log" 2>&1
  echo "docs/guide/pictures/$1.png"
}

mkdir -p "$root/docs/guide/pictures"
pictures | while read -r name width height theme page; do
  if [ $# -eq 0 ] || [[ " $* " == *" $name "* ]]; then shoot "$name" "$width" "$height" "$theme" "$page"; fi
done
