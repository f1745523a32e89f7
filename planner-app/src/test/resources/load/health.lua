function done(summary, latency, requests)
  io.write(string.format("health: %d asked  p50 %.1f ms  p99 %.1f ms  worst %.0f ms  not 2xx %d\n", summary.requests, latency:percentile(50) / 1e3, latency:percentile(99) / 1e3, latency.max / 1e3, summary.errors.status))
end
function delay() return 50 end
