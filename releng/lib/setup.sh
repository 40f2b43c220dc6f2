# Shared by the scripts of this folder: what a machine needs before it can build, and the build itself.
# Sourced by bash. Everything is told on stderr, so that standard output belongs to the command that was asked for.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd -P)
cache=${XDG_CACHE_HOME:-$HOME/.cache}/ferrule
maven_version=3.9.11
logs=$root/target/log
stamps=$root/target/stamps

say() {
    echo "ferrule: $*" >&2
}

die() {
    say "$*"
    exit 2
}

# Installs system packages where that is possible, or names in one line what is missing.
install_packages() {
    local as_root=()
    if [ "$(id -u)" -ne 0 ]; then
        as_root=(sudo -n)
        sudo -n true 2>/dev/null || die "missing on this system: $* (install with: apt-get install $*)"
    fi
    command -v apt-get >/dev/null || die "missing on this system: $* (Debian's names; no apt-get here to install them)"
    say "installing $*"
    mkdir -p "$logs"
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -q update >"$logs/packages.log" 2>&1 \
        && "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -qy --no-install-recommends install "$@" \
            >>"$logs/packages.log" 2>&1 </dev/null \
        || die "could not install $*: see $logs/packages.log"
}

# The major version of the JDK in a folder; empty where there is no compiler.
jdk_version() {
    [ -x "$1/bin/javac" ] && "$1/bin/javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p'
}

find_jdk() {
    local home version on_path
    on_path=$(command -v javac) && on_path=$(dirname "$(dirname "$(readlink -f "$on_path")")")
    for home in "${JAVA_HOME:-}" /usr/lib/jvm/*17* "${on_path:-}" /usr/lib/jvm/*; do
        [ -n "$home" ] || continue
        version=$(jdk_version "$home") || continue
        if [ "${version:-0}" -ge 17 ]; then
            echo "$home"
            return
        fi
    done
    return 1
}

need_jdk() {
    JAVA_HOME=$(find_jdk) || {
        install_packages default-jdk-headless
        JAVA_HOME=$(find_jdk) || die "no JDK 17 or newer after installing default-jdk-headless"
    }
    export JAVA_HOME
}

# Sets mvn to a Maven 3.9: the one on the path, or else one fetched as an artifact by the older one.
need_maven() {
    mvn=$cache/apache-maven-$maven_version/bin/mvn
    [ -x "$mvn" ] && return
    if command -v mvn >/dev/null && mvn -v 2>/dev/null | grep -q 'Apache Maven.* 3\.9\.'; then
        mvn=$(command -v mvn)
        return
    fi
    command -v mvn >/dev/null || install_packages maven
    fetch_maven
}

# Outside the project: inside it an older Maven would load the build's extension and fail.
fetch_maven() {
    local folder
    say "fetching Maven $maven_version into $cache"
    mkdir -p "$cache" "$logs"
    folder=$(mktemp -d "$cache/fetch.XXXXXX")
    (cd "$folder" && mvn -B -ntp org.apache.maven.plugins:maven-dependency-plugin:3.8.1:unpack \
        "-Dartifact=org.apache.maven:apache-maven:$maven_version:zip:bin" "-DoutputDirectory=$folder" \
        >"$logs/maven.log" 2>&1 </dev/null) || die "could not fetch Maven $maven_version: see $logs/maven.log"
    chmod +x "$folder/apache-maven-$maven_version/bin/mvn"
    mv -T "$folder/apache-maven-$maven_version" "$cache/apache-maven-$maven_version" 2>/dev/null || true
    rm -rf "$folder"
    [ -x "$mvn" ] || die "could not place Maven in $cache"
}

# What a window needs.
need_gtk() {
    [ "$(uname)" = Linux ] || return 0
    local missing=()
    # grep reads to the end, so that the commands before it are not cut off and the pipe does not fail
    ldconfig -p 2>/dev/null | grep 'libgtk-3\.so\.0' >/dev/null || missing+=("$(gtk_package)")
    fc-list 2>/dev/null | grep . >/dev/null || missing+=(fontconfig fonts-dejavu-core)
    [ ${#missing[@]} -eq 0 ] || install_packages "${missing[@]}"
}

# An encoder of bar codes, for tests only: where it cannot be had, they are skipped and say so.
want_zint() {
    command -v zint >/dev/null || (install_packages zint) || say "going on without zint"
}

# Renamed in newer releases of Debian and its descendants.
gtk_package() {
    if apt-cache show libgtk-3-0t64 >/dev/null 2>&1; then
        echo libgtk-3-0t64
    else
        echo libgtk-3-0
    fi
}

# One number for everything that a build is made from below the named files and folders.
hash_of() {
    (cd "$root" && find "$@" -name target -prune -o -type f -print0 | LC_ALL=C sort -z | xargs -0 sha256sum \
        | sha256sum | cut -d' ' -f1)
}

# All bundles but those of the workbench.
headless_bundles() {
    (cd "$root" && ls -d bundles/* | grep -vE '\.(ui|product)(\.|$)')
}

# What the command line is made from.
command_line_hash() {
    # shellcheck disable=SC2046 # names of our own, without blanks
    hash_of pom.xml .mvn shared releng/command-line $(headless_bundles)
}

# What the product is made from.
product_hash() {
    hash_of pom.xml .mvn shared bundles features releng seeds LICENSE NOTICE
}

# build NAME HASH RESULT ARGUMENTS...: runs Maven unless RESULT is there and was built from the same sources.
build() {
    local name=$1 hash=$2 result=$3
    shift 3
    if [ -e "$result" ] && [ "$(cat "$stamps/$name" 2>/dev/null)" = "$hash" ]; then
        return
    fi
    need_jdk
    need_maven
    say "building the $name (the first time takes some minutes; log: $logs/$name.log)"
    mkdir -p "$logs" "$stamps"
    rm -f "$stamps/$name"
    if ! (cd "$root" && "$mvn" -B "$@" >"$logs/$name.log" 2>&1 </dev/null); then
        grep -E '^\[(ERROR|FATAL)\]' "$logs/$name.log" | head -20 >&2
        die "the build failed: see $logs/$name.log"
    fi
    [ -e "$result" ] || die "the build left no $result"
    echo "$hash" >"$stamps/$name"
}

# Two runs at the same time would build over each other.
lock() {
    mkdir -p "$root/target"
    if command -v flock >/dev/null; then
        exec 9>"$root/target/lock"
        flock 9
    fi
}

unlock() {
    exec 9>&-
}

# The product for this machine, where the build puts it.
product_folder() {
    local products=$root/releng/org.ferrule.repository/target/products/ferrule arch
    arch=$(uname -m | sed 's/^arm64$/aarch64/')
    case $(uname) in
    Darwin) echo "$products/macosx/cocoa/$arch/ferrule.app/Contents/Eclipse" ;;
    *) echo "$products/linux/gtk/$arch/ferrule" ;;
    esac
}

# Builds the product for this machine if it is not there or older than its sources.
need_product() {
    need_gtk
    lock
    build workbench "$(product_hash)" "$(product_folder)/ferrule-workbench" \
        package -DskipTests -Dferrule.platform=local -pl releng/org.ferrule.repository -am
    unlock
}
