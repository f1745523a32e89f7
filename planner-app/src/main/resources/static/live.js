// Looks from time to time whether the plan shown is being made again, or has been. The page itself stays as its reader left it.
'use strict';
(function () {
  const place = document.getElementById('live');
  if (!place) { return; }
  const every = 20000;
  const idle = 10 * 60000; // nobody is there: the session may end
  let seen = Date.now();
  ['pointerdown', 'keydown', 'scroll'].forEach(function (what) {
    addEventListener(what, function () { seen = Date.now(); }, { passive: true });
  });
  setInterval(function () {
    if (document.hidden || Date.now() - seen > idle) { return; }
    fetch(place.dataset.state, { headers: { Accept: 'text/html' }, redirect: 'error' }).then(function (answer) {
      return answer.ok ? answer.text() : null;
    }).then(function (text) {
      if (text === null) { return; }
      const strip = new DOMParser().parseFromString(text, 'text/html').body;
      if (strip.textContent.trim() !== place.textContent.trim()) {
        place.replaceChildren(...strip.childNodes);
      }
    }).catch(function () { /* no network: the next look may have it */ });
  }, Number(place.dataset.every) || every);
})();
