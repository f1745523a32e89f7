// The key "/" goes to the search of the whole site, unless something is being typed. Without this script, the field is a Tab away.
'use strict';
document.addEventListener('keydown', function (event) {
  const at = document.activeElement;
  const types = at && (at.matches('input, select, textarea') || at.isContentEditable);
  const field = document.getElementById('site-q');
  if (event.key === '/' && field && !types && !event.ctrlKey && !event.metaKey && !event.altKey) {
    event.preventDefault();
    field.focus();
    field.select();
  }
});

// Signing out, from whichever page, takes the sheets off this device that a mechanic keeps for work without network.
document.querySelectorAll('form[action$="/sign-out"]').forEach(function (out) {
  out.addEventListener('submit', function (event) {
    if (!('caches' in window) || out.dataset.dropped) { return; }
    event.preventDefault();
    const leave = function () { if (!out.dataset.dropped) { out.dataset.dropped = 'yes'; out.submit(); } };
    const worker = 'serviceWorker' in navigator ? navigator.serviceWorker.getRegistration('/bay') : Promise.resolve();
    worker.then(function (there) {
      if (there && there.active) { there.active.postMessage({ forget: true }); } // it may still be fetching some
      return caches.keys();
    }).then(function (names) {
      return Promise.all(names.filter((name) => name.startsWith('bay-sheets')).map((name) => caches.delete(name)));
    }).then(leave, leave);
    setTimeout(leave, 1000);
  });
});
