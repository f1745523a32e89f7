#!/usr/bin/env bash
# Tries a Debian package on this machine: install, start, sign-in page, upgrade, removal, the store kept. Needs root; without
# systemd it runs the service's own command as the service's user. Usage: check.sh PACKAGE.deb
set -euo pipefail
deb=$1
unit=/usr/lib/systemd/system/injector-planner.service
state=/var/lib/injector-planner
say() { printf '%s\n' "- $*"; }
check() { # what, command...
  local what=$1
  shift
  "$@" || { echo "NOT SO: $what"; exit 1; }
  say "$what"
}
[ ! -e "$state" ] || { echo "$state is there already: try this on a machine without the planner."; exit 1; }

serve() { # the unit's ExecStart with its environment, as its user
  local line
  line=$(sed -n 's/^ExecStart=//p' "$unit")
  runuser -u injector-planner -- bash -c "set -a; . /etc/injector-planner/environment; set +a; cd $state; umask 077; exec $line" \
    > /tmp/injector-planner.log 2>&1 &
}
start() {
  rm -f /tmp/injector-planner.log
  serve
  for _ in $(seq 90); do
    grep -q '^Ready on' /tmp/injector-planner.log && break
    sleep 1
  done
  grep '^Ready on' /tmp/injector-planner.log
  exec 3<>/dev/tcp/127.0.0.1/8080
  printf 'GET /sign-in HTTP/1.1\r\nHost: 127.0.0.1\r\nConnection: close\r\n\r\n' >&3
  check "sign-in page: 200" grep -q ' 200 ' <(head -1 <&3)
  exec 3>&-
}
stop() {
  pkill -TERM -u injector-planner -f 'planner serve' || true
  for _ in $(seq 60); do pgrep -u injector-planner > /dev/null || return 0; sleep 1; done
  echo "The service did not stop."; exit 1
}
rows() { (cd "$state" && runuser -u injector-planner -- planner user list --data store | wc -l); }

dpkg -i "$deb" > /tmp/injector-planner.dpkg 2>&1 || { cat /tmp/injector-planner.dpkg; exit 1; }
say "installed; $(planner --version | head -1)"
start
for _ in $(seq 30); do grep -q '^First start' /tmp/injector-planner.log && break; sleep 1; done
check "first password: readable by the service only" \
  [ "$(stat -c '%a %U' $state/first-password)" = "600 injector-planner" ]
check "and not in the log" bash -c "! grep -qF '$(cat $state/first-password)' /tmp/injector-planner.log"
stop
before=$(rows)
dpkg -i "$deb" > /tmp/injector-planner.dpkg 2>&1 || { cat /tmp/injector-planner.dpkg; exit 1; }
start
stop
check "upgraded: the store is as it was, $before lines of users" [ "$(rows)" = "$before" ]
dpkg -r injector-planner > /dev/null 2>&1
check "removed: store and settings stay" [ -d "$state/store" -a -e /etc/injector-planner/environment ]
check "and the program is gone" [ ! -e /usr/bin/planner -a ! -e /opt/injector-planner ]
dpkg -P injector-planner > /dev/null 2>&1
check "purged: the store stays" [ -d "$state/store" ]
rm -rf "$state"
deluser --quiet injector-planner 2> /dev/null || true
say "the trial's store and user are removed"
