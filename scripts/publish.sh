# Sourced by run and crossmember; "root" names the repository.
# A program is published into artifacts/NAME: only a published web desk carries its static files, and only a published
# command line is compiled ahead of time (its store opens in half the time).

# True when no file that goes into the program is newer than its last publishing.
# The desk's tokens and faces are in every document, whichever program writes it.
# Project folders themselves are not looked at, for every build writes bin and obj into them.
is_published() { # NAME SIBLING
  local stamp=$root/artifacts/$1/.published
  [ -e "$stamp" ] && [ -z "$(cd "$root" && find src data src/Crossmember.Web/wwwroot/css/tokens.css src/Crossmember.Web/wwwroot/fonts Directory.*.props Directory.*.targets global.json \
    \( -name bin -o -name obj -o -name "$2" \) -prune -o ! -regex 'src\(/[^/]*\)?' -newer "$stamp" -print -quit)" ]
}

# Publishes PROJECT into artifacts/NAME unless it is up to date. SIBLING is the other program, whose sources do not matter.
publish_when_stale() { # NAME PROJECT SIBLING
  is_published "$1" "$3" && return
  command -v dotnet >/dev/null || { echo "The .NET 10 SDK is needed: the command dotnet was not found." >&2; exit 3; }
  mkdir -p "$root/artifacts"
  exec 9>"$root/artifacts/$1.lock"
  if command -v flock >/dev/null; then flock 9; fi
  if ! is_published "$1" "$3"; then publish "$1" "$2" 9>&-; fi
  exec 9>&-
}

# Into a folder beside it, then swapped, so that a build that fails or is stopped leaves the last good one.
publish() { # NAME PROJECT
  local out=$root/artifacts/$1 fresh=$root/artifacts/$1.new old=$root/artifacts/$1.old log=$root/artifacts/$1.log
  [ -t 2 ] && echo "Building $2 (first use, or a source changed) ..." >&2
  rm -rf "$fresh" "$old"
  mkdir -p "$fresh"
  touch "$fresh/.published"
  if ! dotnet publish "$root/src/$2" -c Release -o "$fresh" -nologo -v quiet </dev/null >"$log" 2>&1; then
    cat "$log" >&2
    echo "$2 could not be built; the messages are above." >&2
    exit 3
  fi
  if [ -e "$out" ]; then mv "$out" "$old"; fi
  mv "$fresh" "$out"
  rm -rf "$old"
}

export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_SKIP_FIRST_TIME_EXPERIENCE=1
