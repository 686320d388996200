#!/bin/sh
# Tests the launcher in a copy of this repository: when it builds, when not, and what it says.
set -u
root=$(CDPATH='' cd -- "$(dirname "$0")/.." && pwd)
work=$(mktemp -d) || exit 2
trap 'rm -rf "$work"' EXIT
trap 'exit 130' INT TERM HUP
copy="$work/a copy"
mkdir "$copy" "$work/elsewhere"
(cd "$root" && tar --exclude='./.git' --exclude='./.build' --exclude='./*/target' -cf - .) |
    (cd "$copy" && tar -xf -)
app=$copy/app/src/main/java/org/fandown/app
out=$work/out
err=$work/err

failed() {
    printf '    FAILED: %s\n' "$1"
    sed 's/^/      out: /' "$out"
    sed 's/^/      err: /' "$err"
    exit 1
}

# Runs a command, and expects this exit code.
expect() {
    code=$1
    shift
    "$@" >"$out" 2>"$err" </dev/null
    got=$?
    [ "$got" -eq "$code" ] || failed "$what: ended with $got instead of $code"
}

says() {
    grep -q -- "$1" "$err" || failed "$what: does not say '$1'"
}

prints_version() {
    [ "$(wc -l <"$1" | tr -d ' ')" -eq 1 ] && grep -q '^fandown [0-9]' "$1" ||
        failed "$what: standard output is not the version alone"
}

silent() {
    [ ! -s "$err" ] || failed "$what: says something though nothing was to be done"
}

milliseconds() {
    date +%s%3N
}

begin() {
    what=$1
    begun=$(milliseconds)
}

passed() {
    printf '    ok: %s (%d ms)\n' "$what" "$(($(milliseconds) - begun))"
}

begin "first use builds and says so"
printf '%s\n' 'package org.fandown.app;' '' 'final class Extra {}' >"$app/Extra.java"
expect 0 "$copy/fandown" --version
says "first use: building"
says "built"
prints_version "$out"
passed

begin "second use is quick and silent, also through a symbolic link from elsewhere"
ln -s "../a copy/fandown" "$work/elsewhere/link"
expect 0 sh -c 'cd "$1" && ./link --version' sh "$work/elsewhere"
silent
prints_version "$out"
[ -z "$(ls -A "$work/elsewhere" | grep -v '^link$')" ] || failed "$what: leaves files where it was called"
passed

begin "deleted source is seen, and leaves nothing behind"
ls "$copy"/.build/*/ready >"$work/before"
rm "$app/Extra.java"
expect 0 "$copy/fandown" --version
says "the sources or the Java have changed: building"
newest=$(ls -dt "$copy"/.build/*/ready | head -n 1)
contents=$(cd "${newest%/ready}" && jar tf fandown.jar)
case $contents in
    *Extra*) failed "$what: the class is still in the jar" ;;
    *org/fandown/app/Main.class*) ;;
    *) failed "$what: the jar lacks the program" ;;
esac
passed

begin "touched but equal source builds nothing"
touch "$app/Main.java"
expect 0 "$copy/fandown" --version
silent
passed

begin "source that does not compile: the end of the log, its path, and exit code 2"
cp "$app/Main.java" "$work/Main.java"
echo 'nonsense' >>"$app/Main.java"
expect 2 "$copy/fandown" --version
says "COMPILATION ERROR"
says "The build failed; the whole log is in $copy/.build/build.log"
[ ! -s "$out" ] || failed "$what: writes to standard output"
passed

begin "source put back needs no build"
cp "$work/Main.java" "$app/Main.java"
expect 0 "$copy/fandown" --version
silent
passed

begin "two launches at once build once, in spite of a lock whose owner is gone"
echo '// changed' >>"$app/Main.java"
sh -c 'exit 0' &
gone=$!
wait "$gone"
mkdir "$copy/.build/lock"
echo "$gone" >"$copy/.build/lock/pid"
"$copy/fandown" --version >"$work/out2" 2>"$work/err2" </dev/null &
other=$!
expect 0 "$copy/fandown" --version
wait "$other" || failed "$what: the other launch ended with $?"
prints_version "$out"
prints_version "$work/out2"
[ "$(cat "$err" "$work/err2" | grep -c 'the sources or the Java have changed: building')" -eq 1 ] ||
    failed "$what: not exactly one build"
cat "$err" "$work/err2" | grep -q 'another launch is building' || failed "$what: nobody waited"
[ ! -e "$copy/.build/lock" ] || failed "$what: the lock is still there"
passed

# A path with only these tools on it.
tools_only() {
    rm -rf "$work/bin"
    mkdir "$work/bin"
    for tool in sh cat cksum cp date dirname find head kill ls mkdir mv readlink rm sed sleep sort tail tr "$@"; do
        found=$(command -v "$tool") && [ -x "$found" ] && ln -s "$found" "$work/bin/$tool"
    done
}

one_line() {
    [ "$(wc -l <"$err" | tr -d ' ')" -eq 1 ] || failed "$what: not one line"
    [ ! -s "$out" ] || failed "$what: writes to standard output"
}

echo '// changed again' >>"$app/Main.java"
begin "missing Maven gives one line"
tools_only java javac
expect 2 env -u JAVA_HOME PATH="$work/bin" "$copy/fandown" --version
one_line
says "Maven is missing; install"
passed

begin "missing compiler gives one line"
tools_only java mvn
expect 2 env -u JAVA_HOME PATH="$work/bin" "$copy/fandown" --version
one_line
says "javac) is missing; install"
passed

begin "missing Java gives one line"
tools_only mvn
expect 2 env -u JAVA_HOME PATH="$work/bin" "$copy/fandown" --version
one_line
says "Java is missing; install"
passed

begin "Java before 17 gives one line"
tools_only javac mvn
printf '%s\n' '#!/bin/sh' 'echo "openjdk version \"11.0.2\" 2019-01-15" >&2' >"$work/bin/java"
chmod +x "$work/bin/java"
expect 2 env -u JAVA_HOME PATH="$work/bin" "$copy/fandown" --version
one_line
says "is older than 17; install"
passed

# Prints the key under which the launcher looks for a build to run with this Java. A Java that only
# pretends has a finished build laid out by hand.
key_with() {
    (
        cd "$copy" || exit 1
        find fandown pom.xml .mvn */pom.xml core/src/main browser/src/main app/src/main \
            examples/vehicles examples/scenarios \
            -type f ! -name '.*' ! -name '*~' -exec cksum {} + | LC_ALL=C sort
        cksum <"$1"
    ) | cksum | tr -s ' \t' '-'
}

begin "arguments and the caller's folder arrive as they were given"
tools_only javac mvn
cat >"$work/bin/java" <<'JAVA'
#!/bin/sh
pwd
for argument; do
    printf '[%s]\n' "$argument"
done
JAVA
chmod +x "$work/bin/java"
fake_key=$(key_with "$work/bin/java")
mkdir "$copy/.build/$fake_key"
: >"$copy/.build/$fake_key/ready"
expect 0 env -u JAVA_HOME PATH="$work/bin" sh -c 'cd "$1" && ./link judge "two words" "" "*"' sh "$work/elsewhere"
silent
[ "$(head -n 1 "$out")" = "$work/elsewhere" ] || failed "$what: another folder"
printf '%s\n' "[$copy/.build/$fake_key/fandown.jar]" '[judge]' '[two words]' '[]' '[*]' >"$work/expected"
tail -n 5 "$out" | cmp -s - "$work/expected" || failed "$what: other arguments"
passed

begin "overhead is below half a second when nothing changed"
printf '%s\n' '#!/bin/sh' 'exit 0' >"$work/bin/java"
fake_key=$(key_with "$work/bin/java")
mkdir "$copy/.build/$fake_key"
: >"$copy/.build/$fake_key/ready"
quickest=100000
for _ in 1 2 3 4 5; do
    before=$(milliseconds)
    expect 0 env -u JAVA_HOME PATH="$work/bin" "$copy/fandown" --version
    overhead=$(($(milliseconds) - before))
    silent
    [ "$overhead" -lt "$quickest" ] && quickest=$overhead
done
[ "$quickest" -lt 500 ] || failed "$what: $quickest ms"
what="$what: $quickest ms before Java starts"
passed
