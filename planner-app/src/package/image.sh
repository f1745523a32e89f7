#!/usr/bin/env bash
# Makes the application image: the program with a Java runtime of its own, and the list of classes it loads at start.
# Usage: image.sh TARGET VERSION; TARGET holds planner.jar and lib. Called by mvn -Ppackage package.
set -euo pipefail
target=$(cd "$1" && pwd)
version=${2%%-*}
here=$(cd "$(dirname "$0")" && pwd)
work=$target/package
modules=java.se,jdk.unsupported,jdk.crypto.ec,jdk.zipfs,jdk.localedata,jdk.charsets,jdk.management,jdk.net,jdk.naming.dns

rm -rf "$work"
mkdir -p "$work/input"
cp "$target/planner.jar" "$work/input/"
cp -r "$target/lib" "$work/input/lib"
jpackage --type app-image --name planner --app-version "$version" --vendor "Injector Planner" \
  --input "$work/input" --main-jar planner.jar --dest "$work" --add-modules "$modules" \
  --jlink-options "--strip-java-debug-attributes --no-man-pages --no-header-files"
image=$work/planner
cp "$here/planner.cfg" "$image/lib/app/planner.cfg"
install -m 755 "$here/planner-archive" "$image/bin/planner-archive"
cp "$here/../../../LICENSE" "$image/"

# Classes of a command without a store, of the demo (loading, planning, sheets) and of the running server.
list() { JAVA_TOOL_OPTIONS="-XX:DumpLoadedClassList=$work/$1.classes" "$image/bin/planner" "${@:2}"; }
printf 'exit,event\n1,1\n2,1\n3,0\n' > "$work/lives.csv"
list life life fit "$work/lives.csv" > "$work/life.out" 2>&1
list demo demo --dir "$work/demo" > "$work/demo.out" 2>&1
JAVA_TOOL_OPTIONS="-XX:DumpLoadedClassList=$work/serve.classes" \
  "$image/bin/planner" serve --demo --data "$work/demo/data" --port 0 > "$work/serve.out" 2>&1 &
server=$!
for _ in $(seq 120); do
  address=$(sed -n 's/^Ready on \([^ ]*\) after.*/\1/p' "$work/serve.out")
  [ -n "$address" ] && break
  kill -0 "$server" 2>/dev/null || { cat "$work/serve.out"; exit 1; }
  sleep 1
done
[ -n "$address" ] || { echo "The server did not start within 120 s; see $work/serve.out"; exit 1; }
exec 3<>"/dev/tcp/127.0.0.1/${address##*:}" # one page, so that its classes are listed too
printf 'GET /sign-in HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n' >&3
cat <&3 > "$work/page.html"
exec 3>&-
kill -TERM "$server"
wait "$server" || true
cat "$work"/{life,demo,serve}.classes | awk '!/^#/ && !seen[$0]++' > "$image/lib/app/planner.classes"
echo "Application image: $image, $(wc -l < "$image/lib/app/planner.classes") classes listed"
