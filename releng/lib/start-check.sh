# Starts the built product on each Java that counts: the one that built it, and 25 where one is installed.
# Sourced by bash after a build, with a display.

start_seconds=60

check_starts() {
    local newer ok=0
    check_on "$JAVA_HOME" || ok=1
    newer=$(find_java_25)
    if [ -n "$newer" ]; then
        check_on "$newer" || ok=1
    else
        say "no Java 25 on this machine: not tried on it"
    fi
    return $ok
}

find_java_25() {
    local home
    for home in /usr/lib/jvm/*25*; do
        if [ "$(jdk_version "$home")" = 25 ]; then
            echo "$home"
            return
        fi
    done
}

check_on() {
    local ok=0
    answers_on "$1" || ok=1
    starts_on "$1" || ok=1
    return $ok
}

# The command line of the product, away from the sources, on its own demo documents.
answers_on() {
    local java=$1 output product result=0
    product=$(product_folder)
    output=$(mktemp -d)
    (cd / && JAVA_HOME=$java "$product/ferrule" demo "$product/seeds" "$output" >"$logs/answers.log" 2>&1) || result=1
    ls "$output"/*.pdf >/dev/null 2>&1 || result=1
    rm -rf "$output"
    if [ $result -ne 0 ]; then
        say "the command line of the product fails on $java: see $logs/answers.log"
        return 1
    fi
    say "the command line of the product works on Java $(jdk_version "$java")"
}

# Up when the event loop of the workbench waits, and sound when the workspace log holds no error.
starts_on() {
    local java=$1 workspace pid tries=0 result=1
    workspace=$(mktemp -d)
    (cd / && JAVA_HOME=$java FERRULE_WORKSPACE=$workspace/data exec "$(product_folder)/ferrule-workbench" \
        >"$logs/start.log" 2>&1 </dev/null) &
    pid=$!
    while [ $tries -lt $start_seconds ] && kill -0 $pid 2>/dev/null; do
        sleep 2
        tries=$((tries + 2))
        if is_up "$java" $pid; then
            result=0
            break
        fi
    done
    kill $pid 2>/dev/null
    wait $pid 2>/dev/null
    report_start "$java" $result "$workspace/data/.metadata/.log"
    result=$?
    rm -rf "$workspace"
    return $result
}

is_up() {
    local threads
    threads=$("$1/bin/jstack" "$2" 2>/dev/null) || return 1
    grep -q 'swt.widgets.Display.sleep' <<<"$threads" && grep -q 'swt.PartRenderingEngine' <<<"$threads"
}

report_start() {
    local java=$1 result=$2 log=$3
    if [ "$result" -ne 0 ]; then
        say "the workbench did not start on $java: see $logs/start.log"
        return 1
    fi
    if grep -A1 -E '^!ENTRY [^ ]+ 4 ' "$log" 2>/dev/null >&2; then
        say "the workbench logs an error on $java"
        return 1
    fi
    say "the workbench starts on Java $(jdk_version "$java")"
}
