// Keeps the day's sheets on the device, so that they open without network, on a phone that was started again too.
'use strict';
var KEPT = 'bay-sheets-1';
var SHELL = ['/planner.css', '/bay.css', '/bay-paper.css', '/bay.js', '/scan.js', '/icon.svg', '/zxing/zxing-0.23.0.min.js'];

self.addEventListener('install', function (event) {
  event.waitUntil(caches.open(KEPT).then(function (cache) { return cache.addAll(SHELL); }).then(function () { return self.skipWaiting(); }));
});

self.addEventListener('activate', function (event) {
  event.waitUntil(caches.keys().then(function (names) {
    return Promise.all(names.filter(function (name) { return name !== KEPT; }).map(function (name) { return caches.delete(name); }));
  }).then(function () { return self.clients.claim(); }));
});

function isSheet(url) { return url.pathname === '/bay' || /^\/bay\/[^/]+$/.test(url.pathname) || /^\/bay\/[^/]+\/look\/[^/]+$/.test(url.pathname); }

// Only what the server answered under the page's own address: never the page to sign in, never an error.
function keep(request, answer) {
  if (answer.status !== 200 || answer.redirected) { return Promise.resolve(); }
  var copy = answer.clone();
  return caches.open(KEPT).then(function (cache) { return cache.put(request, copy); });
}

function kept(request) {
  return caches.open(KEPT).then(function (cache) {
    return cache.match(request, { ignoreVary: true }).then(function (there) {
      return there || cache.match(request, { ignoreSearch: true, ignoreVary: true });
    });
  });
}

self.addEventListener('fetch', function (event) {
  var request = event.request;
  var url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== self.location.origin) { return; }
  if (!(request.mode === 'navigate' && isSheet(url)) && SHELL.indexOf(url.pathname) < 0) { return; }
  event.respondWith(fetch(request).then(function (answer) {
    event.waitUntil(keep(request, answer));
    return answer;
  }).catch(function () {
    return kept(request).then(function (there) { return there || Response.error(); });
  }));
});

self.addEventListener('message', function (event) {
  var asked = event.data || {};
  if (asked.forget) { event.waitUntil(caches.delete(KEPT)); }
  if (!asked.keep) { return; }
  event.waitUntil(Promise.all(asked.keep.map(function (address) {
    var request = new Request(address, { credentials: 'same-origin' });
    return fetch(request).then(function (answer) { return keep(request, answer); }).then(function () { return 1; }, function () { return 0; });
  })).then(function (kept) {
    event.source.postMessage({ kept: kept.reduce(function (sum, each) { return sum + each; }, 0) });
  }));
});
