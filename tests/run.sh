#!/usr/bin/env bash
# Installs what the tests need, builds, runs every test, and ends with one line that sums them all.
#
#   bash tests/run.sh             everything
#   bash tests/run.sh Craft       only the test projects whose name holds the word; no format check, no benchmark
#
# On Debian as root it installs what is missing. Elsewhere it says what is missing, and the tests that need it
# are skipped and say so. The .NET SDK, git and node have to be there.
set -uo pipefail
cd "$(dirname "$0")/.."
only="${1:-}"
results="$PWD/artifacts/results"
rm -rf "$results"
mkdir -p "$results"
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_SKIP_FIRST_TIME_EXPERIENCE=1

say() { printf '\n== %s\n' "$*"; }

for tool in dotnet git node npm; do
  command -v "$tool" >/dev/null || { echo "$tool is missing; install it first."; echo "0 passed, 1 failed, 0 skipped"; exit 1; }
done

# What is needed beside them: a way to see that it is there, the Debian package, what it is for.
missing=()
need() { eval "$1" >/dev/null 2>&1 || missing+=("$2"); }
find_missing() {
  missing=()
  need 'command -v chromium' chromium
  need 'command -v rsvg-convert' librsvg2-bin
  need 'command -v pdftotext' poppler-utils
  need 'command -v neato' graphviz
  need 'test -x /usr/bin/time' time
  need 'command -v Rscript' r-base-core
  need 'test -d /usr/lib/R/site-library/spatstat.data' r-cran-spatstat.data
  need 'fc-list "EB Garamond" | grep -q .' fonts-ebgaramond
  need 'fc-list "Liberation Serif" | grep -q .' fonts-liberation
  need 'command -v fc-list' fontconfig
  need 'command -v clang || command -v gcc' clang
  need 'test -e /usr/include/zlib.h' zlib1g-dev
  need 'command -v java' default-jre-headless
}
find_missing
if [ ${#missing[@]} -gt 0 ]; then
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    say "Installing ${missing[*]}"
    { apt-get update && DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "${missing[@]}"; } \
      >"$results/apt.log" 2>&1 || tail -n 5 "$results/apt.log"
    find_missing
  fi
  [ ${#missing[@]} -eq 0 ] || echo "Still missing: ${missing[*]}. The tests that need them are skipped."
fi

# A step that is no test runner counts as one test of its own.
step() {
  local name="$1" log="$results/$2.log" status
  shift 2
  say "$name"
  "$@" >"$log" 2>&1
  status=$?
  count "${log##*/}" $((status == 0)) $((status != 0)) 0
  if [ $status -ne 0 ]; then
    tail -n 40 "$log"
    echo "FAILED: $name"
  fi
  return $status
}

count() { echo "{\"results\":{\"summary\":{\"passed\":$2,\"failed\":$3,\"skipped\":$4}}}" >"$results/$1.json"; }

finish() {
  say "Result"
  exec node tests/tools/sum.mjs "$results"
}

step "Restoring packages as they are locked" restore dotnet restore GroveSpec.sln --locked-mode || finish
step "Building, with every warning an error" build dotnet build GroveSpec.sln -c Release --no-restore -nologo || finish
if [ -z "$only" ]; then
  step "Looking at the formatting" format dotnet format GroveSpec.sln --no-restore --verify-no-changes
fi
step "Making the program" program dotnet publish src/GroveSpec.Cli -c Release -p:Native=true -o artifacts/program -nologo
export GROVESPEC_PROGRAM="$PWD/artifacts/program/grovespec"

for project in tests/GroveSpec.*.Tests; do
  name="$(basename "$project")"
  case "$name" in *"$only"*) ;; *) continue ;; esac
  say "$name"
  timeout --kill-after=20 1200 "$project/bin/Release/net10.0/$name" --progress off --no-ansi --results-directory "$results" \
    --report-xunit-ctrf --report-xunit-ctrf-filename "$name.json"
  status=$?
  # A runner that fell over, ran no test or wrote no report has failed, whatever it counted before.
  echo "{\"runner\":\"$name\",\"status\":$status}" >"$results/$name.status"
done

if [ -z "$only" ]; then
  if command -v neato >/dev/null; then
    step "Comparing speed with a peer" benchmarks dotnet run --project tests/GroveSpec.Benchmarks -c Release --no-build -- --ratios
    cat "$results/benchmarks.log"
  else
    echo "Speed is not compared: graphviz is missing."
    count benchmarks 0 0 1
  fi
fi
finish
