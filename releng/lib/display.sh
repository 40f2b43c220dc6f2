# A display for tests: the one that is there, or an Xvfb of our own that ends with the script. Sourced by bash.

need_display() {
    [ "$(uname)" = Linux ] || return 0
    [ -z "${DISPLAY:-}" ] || return 0
    command -v Xvfb >/dev/null || install_packages xvfb
    local number
    number=$(mktemp)
    Xvfb -displayfd 3 -screen 0 "${screen:-1600x1000}x24" -nolisten tcp 3>"$number" >/dev/null 2>&1 &
    xvfb=$!
    trap 'kill $xvfb 2>/dev/null' EXIT
    local tries=0
    while [ ! -s "$number" ]; do
        tries=$((tries + 1))
        [ $tries -lt 100 ] && kill -0 $xvfb 2>/dev/null || die "Xvfb did not start"
        sleep 0.1
    done
    DISPLAY=:$(cat "$number")
    export DISPLAY
    rm -f "$number"
}
