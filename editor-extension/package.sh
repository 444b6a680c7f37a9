#!/usr/bin/env bash
# Builds both packages of the extension into artifacts/: one for linux-x64 with the native server inside, and one that runs the
# server on an installed .NET.
#
#   bash editor-extension/package.sh
#
# GROVESPEC_PROGRAM may name a native program that was published already.
set -euo pipefail
cd "$(dirname "$0")"
root="$(cd .. && pwd)"
mkdir -p "$root/artifacts"
export DOTNET_NOLOGO=1 DOTNET_CLI_TELEMETRY_OPTOUT=1

if [ ! -e node_modules/.package-lock.json ] || [ package-lock.json -nt node_modules/.package-lock.json ]; then
  npm ci --ignore-scripts --no-audit --no-fund --loglevel=error
fi
npx tsc --noEmit -p .
npx tsc --noEmit -p drawing
cp "$root/LICENSE" LICENSE
trap 'rm -rf LICENSE server' EXIT
node build.mjs

pack() { npx vsce package --no-dependencies --allow-missing-repository --no-git-tag-version "$@" </dev/null; }

rm -rf server
program="${GROVESPEC_PROGRAM:-}"
if [ -z "$program" ]; then
  dotnet publish "$root/src/GroveSpec.Cli" -c Release -p:Native=true -o "$root/artifacts/program" -nologo -v q
  program="$root/artifacts/program/grovespec"
fi
# The libraries that make PNG and PDF stay out of both: the server makes neither.
mkdir -p server/docs
cp "$program" server/grovespec
cp -R "$root/docs/checks" server/docs/checks
pack --target linux-x64 --out "$root/artifacts/grovespec-linux-x64.vsix"

rm -rf server
dotnet publish "$root/src/GroveSpec.Cli" -c Release -o server -nologo -v q -p:UseAppHost=false '-p:PictureSystems=;'
pack --out "$root/artifacts/grovespec-portable.vsix"
ls -l "$root"/artifacts/grovespec-*.vsix
