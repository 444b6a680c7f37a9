#!/usr/bin/env bash
# Installs a real VS Code workbench (the npm package code-server) into a folder of its own, and builds only the native modules it uses.
#
#   bash tests/EndToEnd/install-host.sh FOLDER VERSION [NODE_FOLDER]
#
# NODE_FOLDER holds a node that VERSION needs, with its headers. A stamp in FOLDER says that it is complete.
set -euo pipefail
folder=$1
version=$2
node_folder=${3:-}
stamp="$folder/.complete-$version"
[ -f "$stamp" ] && exit 0

if [ -n "$node_folder" ]; then
  export PATH="$node_folder/bin:$PATH" npm_config_nodedir="$node_folder"
elif [ -f /usr/include/node/node.h ]; then
  export npm_config_nodedir=/usr
fi

rm -rf "$folder"
mkdir -p "$folder"
cd "$folder"
echo '{"name":"editor-host","private":true}' >package.json
# Install scripts would fetch programs from elsewhere.
npm install --ignore-scripts --no-audit --no-fund --loglevel=error "code-server@$version"
npm rebuild --loglevel=error --build-from-source argon2
cd node_modules/code-server/lib/vscode
npm install --ignore-scripts --omit=dev --no-audit --no-fund --loglevel=error
modules=(@vscode/spdlog)
for module in native-watchdog @vscode/native-watchdog; do
  [ -d "node_modules/$module" ] && modules+=("$module")
done
npm rebuild --loglevel=error "${modules[@]}"
for module in "${modules[@]}"; do
  # npm rebuild is content with names it does not have.
  ls "node_modules/$module"/build/Release/*.node >/dev/null
done
ln -sfn node_modules node_modules.asar
ln -sfn code-linux.sh bin/remote-cli/code-server
ln -sfn browser-linux.sh bin/helpers/browser.sh
touch "$stamp"
