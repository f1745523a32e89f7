-- Pages as people open them, with the session of one of them; PAUSE (ms) between two requests of a connection.
local paths = {"/week", "/plan", "/trucks", "/trucks?find=T05", "/trucks/T0001", "/trucks/T0333", "/trucks/T0777", "/order", "/coolant", "/alerts", "/bay", "/returns"}
local at, pause = 0, tonumber(os.getenv("PAUSE") or "0")
local started = false
function init(args) math.randomseed(os.time()) at = math.random(#paths) end
function delay() if pause == 0 then return 0 end return math.random(0, 2 * pause) end
function request()
  at = at % #paths + 1
  return wrk.format("GET", paths[at], {["Cookie"] = os.getenv("COOKIE")})
end
local bad = 0
function response(status) if status ~= 200 then bad = bad + 1 end end
function done(summary, latency, requests)
  io.write(string.format("requests/s %.1f  p50 %.0f ms  p99 %.0f ms  not 2xx/3xx %d  timeouts %d\n",
    summary.requests / (summary.duration / 1e6), latency:percentile(50) / 1e3, latency:percentile(99) / 1e3, summary.errors.status, summary.errors.timeout))
end
