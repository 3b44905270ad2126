# Starts the app as a newcomer does, fetches a page of the demo site, stops it.
set -eu
log=$(mktemp)
setsid make --no-print-directory run LISTEN=127.0.0.1:0 >"$log" 2>&1 &
group=$!
trap 'kill -TERM -- -$group 2>/dev/null || true; rm -f "$log"' EXIT
for _ in $(seq 600); do
	address=$(sed -n 's/^The app is at \(http[^ ]*\).*/\1/p' "$log")
	[ -n "$address" ] && break
	kill -0 $group 2>/dev/null || break
	sleep 0.2 # of a shell that waits for a line; no test depends on its length
done
[ -n "$address" ] || { cat "$log" >&2; exit 1; }
curl -fsS "${address}site/demo" | grep -q 'Pennow Wood'
curl -fsS "${address}field/" | grep -q 'boot.js'
echo "make run answers at $address"
