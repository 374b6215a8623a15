# Sourced by .ci/run: a real VS Code to test in, without a desktop download. Sets
# PADSTONE_EDITOR_HOST (the editor's server) and PADSTONE_CHROMIUM (the browser that shows it).
# It lives in a cache outside the repository; a second run finds it there and does nothing.

padstone_host_version=4.100.3   # the last one for Node 20; it carries VS Code 1.100.3
padstone_host_cache="${XDG_CACHE_HOME:-$HOME/.cache}/padstone-editor-host"
padstone_host="$padstone_host_cache/node_modules/code-server/lib/vscode"
padstone_host_stamp="$padstone_host_cache/ready-$padstone_host_version"

padstone_say() { printf 'editor host: %s\n' "$*"; }

# Debian packages: what the editor needs (browser, search, a font; a compiler for two of its modules), what
# reads a printed PDF (pdftotext), and the outside libraries that numbers are compared with.
padstone_missing=""
for padstone_package in chromium ripgrep fonts-dejavu-core make g++ poppler-utils python3-numpy python3-scipy python3-sympy; do
    dpkg-query -W -f='${db:Status-Status}' "$padstone_package" 2>/dev/null | grep -qx installed || padstone_missing="$padstone_missing $padstone_package"
done
if [ -n "$padstone_missing" ]; then
    padstone_sudo=""
    [ "$(id -u)" -eq 0 ] || padstone_sudo="sudo"
    padstone_say "apt-get install$padstone_missing"
    $padstone_sudo apt-get update -qq
    # shellcheck disable=SC2086 # one word a package
    $padstone_sudo env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $padstone_missing > /dev/null
fi

if [ ! -e "$padstone_host_stamp" ]; then
    padstone_say "npm install code-server@$padstone_host_version into $padstone_host_cache"
    rm -rf "$padstone_host_cache"
    mkdir -p "$padstone_host_cache"
    (
        set -e
        cd "$padstone_host_cache"
        echo '{"name":"padstone-editor-host","private":true}' > package.json
        npm install --ignore-scripts --no-audit --no-fund --loglevel=error "code-server@$padstone_host_version"
        cd "$padstone_host"
        npm install --omit=dev --ignore-scripts --no-audit --no-fund --loglevel=error
        ln -sfn node_modules node_modules.asar
        mkdir -p node_modules/@vscode/ripgrep/bin
        ln -sf "$(command -v rg)" node_modules/@vscode/ripgrep/bin/rg
        # Compiled here against the headers that came with Node, where they did; without the two the editor
        # runs too, but complains and leaves orphans, which the tests end themselves.
        node_prefix="$(dirname "$(dirname "$(command -v node)")")"
        [ ! -e "$node_prefix/include/node/node.h" ] || export npm_config_nodedir="$node_prefix"
        npm rebuild --loglevel=error @vscode/spdlog native-watchdog || padstone_say "could not compile spdlog and native-watchdog; going on without"
        node out/server-main.js --version
        touch "$padstone_host_stamp"
    )
fi
if [ ! -e "$padstone_host_stamp" ]; then
    padstone_say "could not be installed into $padstone_host_cache" >&2
    return 1
fi

export PADSTONE_EDITOR_HOST="$padstone_host"
PADSTONE_CHROMIUM="$(command -v chromium)"
export PADSTONE_CHROMIUM
padstone_say "ready in $PADSTONE_EDITOR_HOST, browser $PADSTONE_CHROMIUM"
