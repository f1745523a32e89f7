// Keeps the day's sheets on the device, so that they open without network, on a phone that was started again too. They belong to
// the person and the day: another person's, or another day's, are deleted and never shown.
'use strict';
var SHELL_KEPT = 'bay-shell-3';
var SHEETS = 'bay-sheets ';
var SHELL = ['/planner.css', '/office.css', '/bay.css', '/bay-paper.css', '/bay-kept.js', '/bay-answer.js', '/bay-send.js', '/bay.js', '/scan.js', '/find.js', '/icon.svg', '/zxing/zxing-0.23.0.min.js'];

function today() {
  var now = new Date();
  return now.getFullYear() + '-' + (now.getMonth() + 1) + '-' + now.getDate();
}

// The cache of a person today; without a person, the one there is.
function sheetsOf(user) { return SHEETS + today() + ' ' + user; }

function dropSheets(but) {
  return caches.keys().then(function (names) {
    return Promise.all(names.filter(function (name) { return name !== SHELL_KEPT && name !== but; }).map(function (name) { return caches.delete(name); }));
  });
}

function ofToday() {
  return caches.keys().then(function (names) {
    return names.filter(function (name) { return name.indexOf(SHEETS + today() + ' ') === 0; })[0];
  });
}

self.addEventListener('install', function (event) {
  // a browser that asks the network beside this worker would show its own error page without network
  if (event.addRoutes) { event.addRoutes({ condition: { requestMode: 'navigate' }, source: 'fetch-event' }); }
  event.waitUntil(caches.open(SHELL_KEPT).then(function (cache) { return cache.addAll(SHELL); }).then(function () { return self.skipWaiting(); }));
});

self.addEventListener('activate', function (event) {
  event.waitUntil(ofToday().then(dropSheets).then(function () { return self.clients.claim(); }));
});

function isSheet(url) { return url.pathname === '/bay' || /^\/bay\/[^/]+$/.test(url.pathname) || /^\/bay\/[^/]+\/look\/[^/]+$/.test(url.pathname); }

// Only what the server answered under the page's own address: never the page to sign in, never an error.
function keepSheet(name, request, answer) {
  if (answer.status !== 200 || answer.redirected) { return Promise.reject(new Error('not kept')); }
  return answer.text().then(function (page) {
    var dated = page.replace('<body', '<body data-kept-at="' + new Date().toISOString() + '"');
    return caches.open(name).then(function (cache) {
      return cache.put(request, new Response(dated, { headers: { 'Content-Type': 'text/html;charset=UTF-8' } }));
    }).then(function () { return dated; });
  });
}

function keptSheet(request) {
  return ofToday().then(function (name) {
    return name && caches.open(name).then(function (cache) {
      return cache.match(request, { ignoreVary: true }).then(function (there) {
        return there || cache.match(request, { ignoreSearch: true, ignoreVary: true });
      });
    });
  });
}

function keptShell(request) {
  return caches.open(SHELL_KEPT).then(function (cache) { return cache.match(request, { ignoreVary: true }); });
}

self.addEventListener('fetch', function (event) {
  var request = event.request;
  var url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== self.location.origin) { return; }
  var sheet = request.mode === 'navigate' && isSheet(url);
  if (!sheet && SHELL.indexOf(url.pathname) < 0) { return; }
  event.respondWith(fetch(request).then(function (answer) {
    if (!sheet && answer.status === 200 && !answer.redirected) {
      var copy = answer.clone();
      event.waitUntil(caches.open(SHELL_KEPT).then(function (cache) { return cache.put(request, copy); }));
    }
    if (sheet && answer.status === 200 && !answer.redirected) {
      var page = answer.clone();
      event.waitUntil(ofToday().then(function (name) { return name && keepSheet(name, request, page); }));
    }
    return answer;
  }).catch(function () {
    return (sheet ? keptSheet(request) : keptShell(request)).then(function (there) { return there || Response.error(); });
  }));
});

// A page says who is signed in and which sheets to keep: all others go first.
self.addEventListener('message', function (event) {
  var asked = event.data || {};
  if (asked.forget) {
    if (fetching) { fetching.abort(); }
    event.waitUntil(dropSheets(''));
  }
  if (!asked.keep || !asked.user) { return; }
  var name = sheetsOf(asked.user);
  event.waitUntil(dropSheets(name).then(function () { return keepAll(name, asked.keep); }).then(function (kept) {
    event.source.postMessage({ kept: kept });
  }));
});

// One page after another, since all at once would wait for each other at the server; with each sheet the diagnoses it leads to.
// Whoever signs out, or asks again, ends what is still being fetched: its answer's session would take the place of the next one's.
var fetching = null;
function keepAll(name, addresses) {
  var left = addresses.slice();
  if (fetching) { fetching.abort(); }
  fetching = new AbortController();
  var asked = fetching.signal;
  var seen = {};
  function next(kept) {
    var address = left.shift();
    if (address === undefined || asked.aborted) { return kept; }
    if (seen[address]) { return next(kept); }
    seen[address] = true;
    var request = new Request(address, { credentials: 'same-origin' });
    return fetch(request, { signal: asked }).then(function (answer) { return asked.aborted ? Promise.reject(new Error('not kept')) : keepSheet(name, request, answer); }).then(function (page) {
      left = left.concat((page.match(/href="\/bay\/[^"\/]+\/look\/[^"\/?]+"/g) || []).map(function (href) { return href.slice(6, -1); }));
      return kept + 1;
    }, function () { return kept; }).then(next);
  }
  return Promise.resolve(next(0));
}
