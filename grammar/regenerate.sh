#!/bin/sh
# Makes src/GroveSpec.Syntax/Parsing/Generated/ anew from the grammar. Needs npm and Java 11 or newer.
# With a folder as argument the result goes there instead, for comparing.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
target=${1:-"$here/../src/GroveSpec.Syntax/Parsing/Generated"}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

cp "$here"/*.g4 "$here/package.json" "$here/package-lock.json" "$work/"
cd "$work"
npm ci --ignore-scripts --no-audit --no-fund --silent
generator=$(ls node_modules/antlr4ng-cli/antlr4-*-complete.jar)

java -jar "$generator" -Dlanguage=CSharp -no-visitor -no-listener -package GroveSpec.Syntax.Parsing.Generated GroveWords.g4
java -jar "$generator" -Dlanguage=CSharp -no-visitor -no-listener -package GroveSpec.Syntax.Parsing.Generated Grove.g4

# The generator writes public classes; outside the folder of the parser nobody may see them. What the tests prove need not
# be proven again at each start, and tables that are read once or twice need not be improved first.
mkdir -p "$target"
sed -e 's/^public partial class/internal partial class/' -e '/CLSCompliant/d' -e 's/new ATNDeserializer()/new ATNDeserializer(new ATNDeserializationOptions { VerifyAtn = false, Optimize = false })/' -e 's/[[:space:]]*$//' Grove.cs > "$target/Grove.cs"
