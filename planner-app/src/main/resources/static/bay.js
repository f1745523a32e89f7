// Forms at the truck and in the store. Without these scripts they work as well; with them, what was typed is kept on this
// device until the server has it, a lost network is waited for, and a scanner's Enter goes to the next field.
(function () {
  'use strict';
  var bay = window.bay;
  var answer = bay.answer;

  function nextField(from) {
    var all = Array.prototype.filter.call(from.form.elements, function (e) {
      return e.tagName === 'INPUT' && (e.type === 'text' || e.type === 'date') && e.offsetParent !== null;
    });
    var next = all[all.indexOf(from) + 1];
    if (next) { next.focus(); } else { from.blur(); }
  }

  // The way to a part of the sheet opens it, and the next cylinder to do.
  function ways(f) {
    document.querySelectorAll('.progress a').forEach(function (way) {
      way.addEventListener('click', function () {
        var part = document.querySelector(way.getAttribute('href'));
        var fold = part && part.closest('details');
        if (fold) { fold.open = true; }
        var card = part && part.id === 'in-c' && Array.prototype.filter.call(f.querySelectorAll('details[data-planned]'), function (each) { return !answer.isDone(f, each); })[0];
        if (card) { card.open = true; }
      });
    });
  }

  function start(shownAgain) {
    var f = bay.form();
    if (!f) { bay.dropKept(); return; }
    var again = f.getAttribute('data-shown-again') === 'true';
    if (!shownAgain && !again && !document.getElementById('wrong')) { bay.restore(f); }
    if (!shownAgain && again) { bay.save(f, true); }
    answer.count(f);
    f.querySelectorAll('input[data-most]').forEach(function (e) { if (e.value.trim()) { answer.judge(f, e); } });
    f.addEventListener('input', function (event) {
      answer.splitLabel(f, event.target);
      bay.save(f);
      answer.count(f);
      if (event.target.hasAttribute('data-most')) { answer.judge(f, event.target); }
    });
    f.addEventListener('change', function (event) {
      answer.parts(f);
      bay.save(f);
      answer.count(f, event.target);
      answer.finished(f, event.target);
    });
    f.addEventListener('submit', function (event) {
      if (bay.pathOf(f).indexOf('/close-outs/') >= 0) { return; }
      if (event.submitter && event.submitter.hasAttribute('formaction')) { bay.save(f); return; }
      event.preventDefault();
      // Enter alone never closes a visit or ends a diagnosis
      bay.send(f, bay.ofButton(event.submitter) || { name: 'do', value: f.classList.contains('close-out') ? 'check' : 'note' });
    });
    ways(f);
  }

  document.addEventListener('keydown', function (event) {
    var from = event.target;
    if (event.key === 'Enter' && from.tagName === 'INPUT' && from.type === 'text' && from.form && from.classList.contains('code')) {
      event.preventDefault();
      nextField(from);
    }
  });

  // A page that came from this device says of when it is.
  function sayAsOf() {
    var at = document.body.getAttribute('data-kept-at');
    if (!at) { return; }
    var line = document.createElement('p');
    line.className = 'note';
    line.id = 'as-of';
    line.setAttribute('role', 'status');
    line.textContent = 'No network: this page is as of ' + new Date(at).toLocaleString([], { weekday: 'short', hour: '2-digit', minute: '2-digit' }) + '.';
    document.querySelector('main').prepend(line);
  }

  function keepSheets() {
    if (!navigator.serviceWorker) { return; }
    navigator.serviceWorker.register('/bay-worker.js', { scope: '/bay' }).then(function () {
      return navigator.serviceWorker.ready;
    }).then(function (ready) {
      var sheets = Array.prototype.map.call(document.querySelectorAll('a.row-link[href^="/bay/"]'), function (way) { return way.getAttribute('href'); });
      navigator.serviceWorker.addEventListener('message', function (event) {
        if (event.data && event.data.kept) {
          document.documentElement.setAttribute('data-kept-sheets', event.data.kept);
          bay.say('kept', event.data.kept === 1 ? 'This sheet is on this device: it opens without network.'
            : event.data.kept + ' pages are on this device: they open without network.');
        }
      });
      ready.active.postMessage({ user: bay.user, keep: [window.location.pathname + window.location.search].concat(sheets) });
    }).catch(function () { /* sheets then need the network */ });
  }

  bay.start = start;
  start(false);
  sayAsOf();
  keepSheets();
  bay.sendAll();
})();
