// Forms at the truck and in the store. Without this file they work as well; with it, what was typed is kept on this
// device until the server has it, a lost network is waited for, and a scanner's Enter goes to the next field.
(function () {
  'use strict';
  var RETRY_MS = 15000;
  var waiting = null;

  function form() { return document.querySelector('form.close-out'); }
  function draftName(f) { return 'close-out ' + new URL(f.action).pathname; }
  function store(name, value) {
    try { if (value === null) { localStorage.removeItem(name); } else { localStorage.setItem(name, value); } return true; }
    catch (e) { return false; }
  }
  function stored(name) { try { return localStorage.getItem(name); } catch (e) { return null; } }

  function fields(f) {
    return Array.prototype.filter.call(f.elements, function (e) {
      return e.name && e.name !== '_csrf' && e.name !== 'usedPart' && e.name !== 'week' && e.name !== 'distance' && e.type !== 'submit';
    });
  }

  function distance(f) { return f.elements.distance ? f.elements.distance.value : ''; }

  function save(f) {
    var kept = {};
    fields(f).forEach(function (e) {
      if (e.type === 'checkbox' || e.type === 'radio') { kept[e.name + '\n' + e.value] = e.checked; }
      else { kept[e.name] = e.value; }
    });
    kept['\nweek'] = f.elements.week ? f.elements.week.value : '';
    kept['\ndistance'] = distance(f);
    var ok = store(draftName(f), JSON.stringify(kept));
    say('draft', ok ? 'Kept on this device until it is saved.' : 'If saving fails, your entries stay here.');
  }

  function restore(f) {
    var kept = null;
    try { kept = JSON.parse(stored(draftName(f)) || 'null'); } catch (e) { kept = null; }
    if (!kept || kept['\nweek'] !== (f.elements.week ? f.elements.week.value : '')) { return; }
    // An odometer in a unit other than this page asks for would be taken for a wrong one.
    var other = kept.odometer && kept['\ndistance'] !== distance(f);
    fields(f).forEach(function (e) {
      if (other && e.name === 'odometer') { return; }
      var box = e.type === 'checkbox' || e.type === 'radio';
      var value = kept[box ? e.name + '\n' + e.value : e.name];
      if (value !== undefined) { if (box) { e.checked = value; } else { e.value = value; } }
    });
    say('draft', other ? 'What you had typed is here again, but not the odometer: it was typed in another unit. Fix: read it again.'
      : 'What you had typed is here again.');
  }

  // A kept form's draft has done its work.
  function dropKept() {
    document.querySelectorAll('[data-kept]').forEach(function (e) {
      var name = 'close-out ' + window.location.pathname;
      var value = stored(name);
      if (value && value.indexOf(e.getAttribute('data-kept')) >= 0) { store(name, null); }
    });
  }

  function say(id, words) {
    var place = document.getElementById(id);
    if (place) { place.textContent = words; place.hidden = words === ''; }
  }

  function network(words) {
    say('network', words);
    if (words) { say('draft', words); }
  }

  function send(f, what) {
    clearTimeout(waiting);
    waiting = null;
    save(f);
    var body = new URLSearchParams(new FormData(f));
    body.append('do', what);
    var button = f.querySelector('.button.main');
    button.disabled = true;
    fetch(f.action, { method: 'POST', body: body, headers: { 'Accept': 'text/html' } }).then(function (answer) {
      button.disabled = false;
      if (answer.redirected && new URL(answer.url).pathname.indexOf('/bay') === 0) {
        store(draftName(f), null);
        window.location.assign(answer.url);
      } else if (answer.redirected || answer.status === 401 || answer.status === 403) {
        network('You are signed out. What you typed is kept on this device. Fix: sign in again, then open this page and save.');
      } else if (answer.status === 200 || answer.status === 422) {
        return answer.text().then(show);
      } else if (answer.status >= 502 && answer.status <= 504) {
        later(f, what);
      } else {
        network('The server could not save it (' + answer.status + '). What you typed is kept on this device. Fix: try again; if it stays so, tell the manager.');
      }
      return undefined;
    }).catch(function () {
      button.disabled = false;
      later(f, what);
    });
  }

  function later(f, what) {
    if (what !== 'close') { return; }
    network('No network. What you typed is kept on this device, and is sent when the network is back.');
    waiting = setTimeout(function () { send(f, what); }, RETRY_MS);
  }

  // The server's page takes the place of this one, with the sentence beside each field.
  function show(text) {
    var page = new DOMParser().parseFromString(text, 'text/html');
    var now = page.querySelector('main');
    if (!now) { return; }
    document.querySelector('main').replaceWith(document.importNode(now, true));
    start(true);
    var wrong = document.getElementById('wrong');
    if (wrong) { wrong.focus(); wrong.scrollIntoView(); } else { window.scrollTo(0, 0); }
  }

  function count(f) {
    f.querySelectorAll('section.sec').forEach(function (section) {
      var ticks = section.querySelectorAll('.job input');
      var aside = section.querySelector('h2 .aside');
      if (ticks.length && aside) {
        var done = section.querySelectorAll('.job input:checked').length;
        aside.textContent = done + ' of ' + ticks.length + ' done';
      }
    });
  }

  // Parts follow the cylinders and services really done, each line until somebody changes it.
  function parts(f) {
    var fitted = Array.prototype.filter.call(f.querySelectorAll('input[type=radio][value=fitted]:checked'), function () { return true; })
      .map(function (e) { return e.name.replace(/^c(\d+)\.fate$/, '$1'); });
    var tasks = Array.prototype.map.call(f.querySelectorAll('input[name=task]:checked'), function (e) { return e.value; });
    f.querySelectorAll('input[data-counted]').forEach(function (auto) {
      var line = f.elements[auto.name.replace(/^auto\./, 'used.')];
      if (!line || line.value.trim() !== auto.value) { return; }
      var pieces = 0;
      auto.getAttribute('data-counted').split(';').forEach(function (rule) {
        var at = rule.indexOf('*');
        if (at < 0) { return; }
        var what = rule.substring(at + 1);
        var times = what === 'each' ? fitted.length
          : what.indexOf('task ') === 0 ? (tasks.indexOf(what.substring(5)) >= 0 ? 1 : 0)
          : (what.substring(4).split(' ').some(function (c) { return fitted.indexOf(c) >= 0; }) ? 1 : 0);
        pieces += times * Number(rule.substring(0, at));
      });
      auto.value = line.value = pieces > 0 ? String(pieces) : '';
    });
  }

  function nextField(from) {
    var all = Array.prototype.filter.call(from.form.elements, function (e) {
      return e.tagName === 'INPUT' && (e.type === 'text' || e.type === 'date') && e.offsetParent !== null;
    });
    var next = all[all.indexOf(from) + 1];
    if (next) { next.focus(); } else { from.blur(); }
  }

  function start(shownAgain) {
    var f = form();
    if (!f) { dropKept(); return; }
    if (!shownAgain && f.getAttribute('data-shown-again') !== 'true' && !document.getElementById('wrong')) { restore(f); }
    count(f);
    f.addEventListener('input', function () { save(f); count(f); });
    f.addEventListener('change', function () { parts(f); save(f); count(f); });
    f.addEventListener('submit', function (event) {
      if (new URL(f.action).pathname.indexOf('/close-outs/') >= 0) { return; }
      event.preventDefault();
      send(f, event.submitter && event.submitter.value === 'close' ? 'close' : 'check');
    });
  }

  document.addEventListener('keydown', function (event) {
    var from = event.target;
    if (event.key === 'Enter' && from.tagName === 'INPUT' && from.type === 'text' && from.form && from.classList.contains('code')) {
      event.preventDefault();
      nextField(from);
    }
  });
  window.addEventListener('online', function () {
    if (waiting !== null && form()) { send(form(), 'close'); }
  });
  start(false);
})();
