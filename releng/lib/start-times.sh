# How long the built product takes from its start until its window is there. Sourced by bash after a build, with a
# display that shows nothing else.

starts=6

# Each start finds what the one before has left, which was ended by its menu; the first one prepares the workspace. What
# is open in a workspace is open again: FERRULE_WORKSPACE names one in which a chart was left, say.
start_times() {
    command -v xdotool >/dev/null || install_packages xdotool
    local folder i
    folder=$(mktemp -d)
    for i in $(seq 1 $starts); do
        start_once "${FERRULE_WORKSPACE:-$folder/workspace}" || die "the product did not open a window, or did not end"
    done
    rm -rf "$folder"
}

start_once() {
    local pid began window
    began=$(date +%s%N)
    FERRULE_WORKSPACE=$1 "$(product_folder)/ferrule-workbench" >/dev/null 2>&1 </dev/null &
    pid=$!
    window=$(first_window $pid) || return 1
    echo "start: window after $((($(date +%s%N) - began) / 1000000)) ms," \
        "processor $(awk '{ print ($14 + $15) * 10 }' "/proc/$pid/stat") ms," \
        "load $(cut -d ' ' -f 1 /proc/loadavg)"
    sleep 5
    end_by_menu "$window"
    ended $pid
}

first_window() {
    local window
    while kill -0 "$1" 2>/dev/null; do
        window=$(xdotool search --onlyvisible --name Ferrule 2>/dev/null | head -1)
        if [ -n "$window" ]; then
            echo "$window"
            return
        fi
        sleep 0.05
    done
    return 1
}

# The last entry of the first menu.
end_by_menu() {
    xdotool windowfocus "$1" sleep 0.5 key alt+f sleep 1 key Up sleep 0.3 key Return
}

ended() {
    local tries=0
    while kill -0 "$1" 2>/dev/null; do
        tries=$((tries + 1))
        [ $tries -lt 300 ] || { kill "$1"; return 1; }
        sleep 0.1
    done
}
