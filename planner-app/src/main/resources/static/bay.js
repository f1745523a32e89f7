// Forms at the truck and in the store. Without this file they work as well; with it, what was typed is kept on this
// device until the server has it, a lost network is waited for, and a scanner's Enter goes to the next field.
(function () {
  'use strict';
  var RETRY_MS = 15000;
  var waiting = null;
  // Who is signed in: what another typed on this device is neither shown nor sent in this one's name.
  var user = encodeURIComponent(document.currentScript.getAttribute('data-user') || '');

  function form() { return document.querySelector('form.close-out'); }
  function pathOf(f) { return new URL(f.action).pathname; }
  // A form by its person, truck and job: what was typed for an earlier job does not come up in the next.
  function nameOf(f) {
    var job = f.elements.job && f.elements.job.value;
    var week = f.elements.week && f.elements.week.value;
    return user + ' ' + pathOf(f) + ' ' + (job ? 'job-' + job : week || 'unplanned');
  }
  function draftName(f) { return 'close-out ' + nameOf(f); }
  function keyOf(f) { return f.elements.formKey ? f.elements.formKey.value : ''; }
  function names(start) {
    var found = [];
    try {
      for (var i = 0; i < localStorage.length; i++) {
        if (localStorage.key(i).indexOf(start) === 0) { found.push(localStorage.key(i)); }
      }
    } catch (e) { found = []; }
    return found;
  }
  function store(name, value) {
    try { if (value === null) { localStorage.removeItem(name); } else { localStorage.setItem(name, value); } return true; }
    catch (e) { return false; }
  }
  function stored(name) { try { return localStorage.getItem(name); } catch (e) { return null; } }

  function fields(f) {
    return Array.prototype.filter.call(f.elements, function (e) {
      return e.name && ['_csrf', 'usedPart', 'week', 'distance', 'formKey', 'job'].indexOf(e.name) < 0 && e.name.indexOf('kit.') !== 0 && e.type !== 'submit';
    });
  }

  function distance(f) { return f.elements.distance ? f.elements.distance.value : ''; }

  function save(f, quiet) {
    var kept = {};
    fields(f).forEach(function (e) {
      if (e.type === 'checkbox' || e.type === 'radio') { kept[e.name + '\n' + e.value] = e.checked; }
      else { kept[e.name] = e.value; }
    });
    kept['\nkey'] = keyOf(f);
    kept['\ndistance'] = distance(f);
    var ok = store(draftName(f), JSON.stringify(kept));
    if (quiet) { return; }
    say('draft', ok ? 'Kept on this device until it is saved.' : 'If saving fails, your entries stay here.');
  }

  function restore(f) {
    var kept = null;
    try { kept = JSON.parse(stored(draftName(f)) || 'null'); } catch (e) { kept = null; }
    if (!kept) { return; }
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
      names('close-out ' + user + ' ' + window.location.pathname + ' ').forEach(function (name) {
        if (JSON.parse(stored(name) || '{}')['\nkey'] === e.getAttribute('data-kept')) { store(name, null); }
      });
    });
  }

  function say(id, words) {
    var place = document.getElementById(id);
    if (place) { place.textContent = words; place.hidden = words === ''; }
  }

  function network(words) {
    say('network', words);
  }

  function send(f, what) {
    clearTimeout(waiting);
    waiting = null;
    save(f, true);
    var body = new URLSearchParams(new FormData(f));
    body.append('do', what);
    var button = f.querySelector('.button.main');
    button.disabled = true;
    fetch(f.action, { method: 'POST', body: body, headers: { 'Accept': 'text/html' } }).then(function (answer) {
      button.disabled = false;
      if (answer.redirected && new URL(answer.url).pathname.indexOf('/bay') === 0) {
        store(draftName(f), null);
        store(waitingName(f), null);
        window.location.assign(answer.url);
      } else if (answer.redirected || answer.status === 401 || answer.status === 403) {
        network('You are signed out. What you typed is kept on this device. Fix: sign in again, then open this page and save.');
      } else if (answer.status === 200 || answer.status === 422) {
        var left = stored(waitingName(f));
        if (answer.status === 422 && left !== null) {
          left = JSON.parse(left);
          left.refused = true;
          store(waitingName(f), JSON.stringify(left));
        }
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

  // What waits to be sent outlives this page, and the phone being switched off.
  function waitingName(f) { return 'bay waiting ' + nameOf(f); }

  function later(f, what) {
    if (what !== 'close') { return; }
    var body = new URLSearchParams(new FormData(f));
    body.append('do', 'close');
    store(waitingName(f), JSON.stringify({ body: body.toString(), path: pathOf(f), truck: f.getAttribute('data-truck') }));
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
    window.dispatchEvent(new Event('bay-shown'));
    var wrong = document.getElementById('wrong');
    if (wrong) { wrong.focus(); wrong.scrollIntoView(); } else { window.scrollTo(0, 0); }
  }

  // Ticks of a fold, in its head and in the line of progress; a finished part folds and the next one opens.
  function count(f, folding) {
    f.querySelectorAll('details[data-part]').forEach(function (part) {
      var ticks = part.querySelectorAll('.job input');
      var done = part.querySelectorAll('.job input:checked').length;
      var aside = part.querySelector('summary .aside');
      var inner = part.querySelector('.fold-in');
      if (ticks.length && aside) { aside.textContent = done + ' of ' + ticks.length + ' done'; }
      if (inner) { progress(f, inner.id, done, ticks.length); }
      if (folding && part.contains(folding) && done === ticks.length && inner.id !== 'in-e') {
        part.open = false;
        openNext(f, part);
      }
    });
    cylinders(f);
    readings(f);
  }

  function openNext(f, part) {
    var parts = Array.prototype.slice.call(f.querySelectorAll('details[data-part]'));
    var next = parts[parts.indexOf(part) + 1];
    var cards = Array.prototype.slice.call(f.querySelectorAll('details[data-planned]'));
    var reached = part.querySelector('#in-b') !== null;
    var open = cards.filter(function (card) { return !isDone(f, card); })[0];
    if (reached && open) { open.open = true; } else if (next) { next.open = true; }
  }

  function progress(f, id, done, all) {
    var step = f.querySelector('.progress [data-step="' + id + '"]');
    if (!step) { return; }
    step.querySelector('small').textContent = done + ' of ' + all;
    step.querySelector('use').setAttribute('href', all > 0 && done === all ? '#m-done' : done > 0 ? '#m-bay' : '#m-plan');
  }

  function valueOf(f, name) {
    var e = f.elements[name];
    if (!e) { return ''; }
    if (e.length !== undefined && e.tagName !== 'SELECT') {
      var chosen = Array.prototype.filter.call(e, function (each) { return each.checked; })[0];
      return chosen ? chosen.value : '';
    }
    return e.type === 'checkbox' || e.type === 'radio' ? (e.checked ? e.value : '') : e.value.trim();
  }

  // Whether all is entered that the server asks of a cylinder.
  function isDone(f, card) {
    var c = 'c' + card.getAttribute('data-cylinder') + '.';
    if (valueOf(f, c + 'fate') === 'left') { return valueOf(f, c + 'reason') !== ''; }
    var known = valueOf(f, c + 'asPicked') !== '' || valueOf(f, c + 'serial') !== '' || valueOf(f, c + 'code').split(';').length === 4;
    var coded = valueOf(f, c + 'coded') !== '' || valueOf(f, c + 'programmed') !== '' && valueOf(f, c + 'readBack') !== '';
    return valueOf(f, c + 'found') !== '' && known && coded;
  }

  function cylinders(f) {
    var cards = Array.prototype.slice.call(f.querySelectorAll('details[data-planned]'));
    if (!cards.length) { return; }
    var open = cards.filter(function (card) { return !isDone(f, card); });
    cards.forEach(function (card) {
      var state = card.querySelector('[data-state]');
      var was = state.textContent === 'done';
      var now = open.indexOf(card) < 0;
      if (now) { state.textContent = 'done'; } else if (was) { state.textContent = 'to do'; }
    });
    var words = (cards.length - open.length) + ' of ' + cards.length + ' done'
      + (open.length ? ', next: cylinder ' + open[0].getAttribute('data-cylinder') : '');
    say('next', words);
    var aside = f.querySelector('#sec-c .aside');
    if (aside) { aside.textContent = words; }
    progress(f, 'in-c', cards.length - open.length, cards.length);
  }

  // A cylinder that was just finished folds, and the next one opens.
  function finished(f, target) {
    var card = target.closest ? target.closest('details[data-planned]') : null;
    if (!card || !isDone(f, card) || target.type === 'text') { return; }
    card.open = false;
    var next = Array.prototype.filter.call(f.querySelectorAll('details[data-planned]'), function (each) { return !isDone(f, each); })[0];
    if (next) {
      next.open = true;
      next.querySelector('summary').scrollIntoView({ block: 'start' });
    } else {
      var refit = document.getElementById('in-d') || document.getElementById('in-e');
      if (refit) { refit.parentElement.open = true; refit.parentElement.scrollIntoView({ block: 'start' }); }
    }
  }

  // A label scanned into one field fills both.
  function splitLabel(f, e) {
    var field = /^c(\d+)\.(serial|code)$/.exec(e.name || '');
    var label = e.value.trim().split(';');
    if (!field || label.length !== 4 || label[0] !== f.getAttribute('data-truck') || label[1] !== field[1]) { return; }
    f.elements['c' + field[1] + '.serial'].value = label[2];
    f.elements['c' + field[1] + '.code'].value = label[3];
  }

  function readings(f) {
    var rows = f.querySelectorAll('#in-t [data-reading]');
    if (!rows.length) { return; }
    var read = Array.prototype.filter.call(rows, function (row) {
      return Array.prototype.some.call(row.querySelectorAll('input'), function (e) { return e.value.trim() !== ''; });
    });
    var next = Array.prototype.filter.call(rows, function (row) { return read.indexOf(row) < 0; })[0];
    var words = read.length + ' of ' + rows.length + ' read' + (next ? ', next: cylinder ' + next.getAttribute('data-reading') : '');
    var aside = f.querySelector('#sec-t .aside');
    if (aside) { aside.textContent = words; }
    if (!f.querySelector('details[data-planned]')) { say('next', words); }
    progress(f, 'in-t', read.length, rows.length);
  }

  // A value over its limit is said at once: its limit here, what it will do to the plan by the server.
  var judging = null;
  function judge(f, e) {
    if (!e.hasAttribute('data-most') || e.getAttribute('data-most') === '') { return; }
    var cylinder = e.closest('[data-reading]').getAttribute('data-reading');
    var over = Array.prototype.filter.call(e.closest('tr').querySelectorAll('input[data-most]'), function (each) {
      var value = Math.abs(Number(each.value.trim().replace('\u2212', '-').replace(',', '.')));
      var most = Number(each.getAttribute('data-most'));
      var wrong = each.value.trim() !== '' && each.getAttribute('data-most') !== '' && value > most;
      if (wrong) { each.setAttribute('aria-invalid', 'true'); } else { each.removeAttribute('aria-invalid'); }
      return wrong;
    });
    var row = f.querySelector('[data-says="' + cylinder + '"]');
    row.hidden = over.length === 0;
    if (!over.length) { row.querySelector('.over-box').textContent = ''; return; }
    row.querySelector('.over-box').textContent = 'Cylinder ' + cylinder + ': over its limit. Read it once more before anything is replaced.';
    clearTimeout(judging);
    judging = setTimeout(function () {
      fetch(e.closest('table').getAttribute('data-judge'), { method: 'POST', body: new URLSearchParams(new FormData(f)), headers: { 'Accept': 'application/json' } })
        .then(function (answer) { return answer.ok ? answer.json() : {}; })
        .then(function (says) {
          Object.keys(says).forEach(function (each) {
            var box = f.querySelector('[data-says="' + each + '"] .over-box');
            if (box && !box.closest('tr').hidden) { box.textContent = says[each]; }
          });
        }).catch(function () { /* without network the limit alone is said */ });
    }, 400);
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
    if (!shownAgain && f.getAttribute('data-shown-again') === 'true') { save(f, true); }
    count(f);
    f.querySelectorAll('input[data-most]').forEach(function (e) { if (e.value.trim()) { judge(f, e); } });
    f.addEventListener('input', function (event) {
      splitLabel(f, event.target);
      save(f);
      count(f);
      if (event.target.hasAttribute('data-most')) { judge(f, event.target); }
    });
    f.addEventListener('change', function (event) { parts(f); save(f); count(f, event.target); finished(f, event.target); });
    f.addEventListener('submit', function (event) {
      if (pathOf(f).indexOf('/close-outs/') >= 0) { return; }
      if (event.submitter && event.submitter.hasAttribute('formaction')) { save(f); return; }
      event.preventDefault();
      send(f, event.submitter && event.submitter.value === 'close' ? 'close' : 'check');
    });
    document.querySelectorAll('.progress a').forEach(function (way) {
      way.addEventListener('click', function () {
        var part = document.querySelector(way.getAttribute('href'));
        var fold = part && part.closest('details');
        if (fold) { fold.open = true; }
        var card = part && part.id === 'in-c' && Array.prototype.filter.call(f.querySelectorAll('details[data-planned]'), function (each) { return !isDone(f, each); })[0];
        if (card) { card.open = true; }
      });
    });
  }

  document.addEventListener('keydown', function (event) {
    var from = event.target;
    if (event.key === 'Enter' && from.tagName === 'INPUT' && from.type === 'text' && from.form && from.classList.contains('code')) {
      event.preventDefault();
      nextField(from);
    }
  });
  // What others typed here waits for them.
  function ofOthers() {
    return names('bay waiting ').filter(function (name) { return name.indexOf('bay waiting ' + user + ' ') !== 0; }).map(function (name) {
      var who = decodeURIComponent(name.split(' ')[2] || '');
      return { words: JSON.parse(stored(name)).truck + ': an entry of ' + who + ' is on this device, not sent yet. Fix: ' + who + ' signs in here.' };
    });
  }

  function sayWaiting(words) {
    var place = document.getElementById('waiting');
    if (!place) { return; }
    place.textContent = '';
    words.forEach(function (each) {
      var line = document.createElement('p');
      line.textContent = each.words + ' ';
      if (each.path) {
        var way = document.createElement('a');
        way.href = each.path;
        way.textContent = 'Open ' + each.truck;
        line.appendChild(way);
      }
      place.appendChild(line);
    });
    place.hidden = words.length === 0;
  }

  // Sends what waits, each once: its form's key makes a second sending harmless. A fresh token is asked for.
  function sendWaiting() {
    var own = names('bay waiting ' + user + ' ').filter(function (name) { return !form() || waitingName(form()) !== name; });
    var said = ofOthers();
    own.reduce(function (before, name) {
      return before.then(function () { return sendOne(name, said); });
    }, Promise.resolve()).then(function () { if (said.length) { sayWaiting(said); } });
  }

  function sendOne(name, said) {
    var kept = JSON.parse(stored(name));
    var path = kept.path;
    if (kept.refused) {
      said.push({ words: kept.truck + ': not saved, needs correcting.', path: path, truck: kept.truck });
      return Promise.resolve();
    }
    return fetch(path, { headers: { 'Accept': 'text/html' }, cache: 'no-store' }).then(function (page) {
      if (page.redirected) {
        said.push({ words: kept.truck + ': you are signed out; it is kept on this device. Fix: sign in again.' });
        return undefined;
      }
      return page.text().then(function (text) {
        var token = new DOMParser().parseFromString(text, 'text/html').querySelector('input[name=_csrf]');
        var body = new URLSearchParams(kept.body);
        if (token) { body.set('_csrf', token.value); }
        return fetch(path, { method: 'POST', body: body, headers: { 'Accept': 'text/html' } });
      }).then(function (answer) {
        if (answer.redirected && new URL(answer.url).pathname.indexOf('/bay') === 0) {
          store(name, null);
          store(name.replace('bay waiting ', 'close-out '), null);
          said.push({ words: kept.truck + ': sent and saved.' });
        } else if (answer.status === 422) {
          kept.refused = true;
          store(name, JSON.stringify(kept));
          said.push({ words: kept.truck + ': not saved, needs correcting.', path: path, truck: kept.truck });
        } else {
          said.push({ words: kept.truck + ': kept on this device, not sent yet.' });
        }
      });
    }).catch(function () {
      said.push({ words: kept.truck + ': no network; kept on this device, and sent when it is back.' });
    });
  }

  // A sheet whose entries wait: sent from here, and what the server refuses is shown beside its field.
  function sendOwn() {
    var f = form();
    if (f && f.elements['do'] && stored(waitingName(f)) !== null && !document.getElementById('wrong')) {
      freshToken(f).then(function () { send(f, 'close'); }).catch(function () { later(f, 'close'); });
    }
  }

  // With the key that it was first sent with: if it had arrived after all, it is not kept twice.
  function freshToken(f) {
    var left = JSON.parse(stored(waitingName(f)) || 'null');
    if (left && f.elements.formKey) { f.elements.formKey.value = new URLSearchParams(left.body).get('formKey'); }
    return fetch(f.action, { headers: { 'Accept': 'text/html' }, cache: 'no-store' }).then(function (page) {
      if (page.redirected) { throw new Error('signed out'); }
      return page.text();
    }).then(function (text) {
      var token = new DOMParser().parseFromString(text, 'text/html').querySelector('input[name=_csrf]');
      if (token && f.elements._csrf) { f.elements._csrf.value = token.value; }
    });
  }

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

  // A diagnosis: what was typed stays on this device until the server has it, and saving says when there is no network.
  function look() {
    var f = document.querySelector('form.look-form');
    if (!f) { return; }
    var name = 'look ' + user + ' ' + pathOf(f);
    var entered = function (e) { return e.name && e.type !== 'hidden' && e.type !== 'submit'; };
    var kept = JSON.parse(stored(name) || 'null');
    if (document.getElementById('ended')) { store(name, null); } else if (kept && !document.getElementById('wrong')) {
      Array.prototype.filter.call(f.elements, entered).forEach(function (e) {
        var box = e.type === 'checkbox' || e.type === 'radio';
        var value = kept[box ? e.name + '\n' + e.value : e.name];
        if (value !== undefined) { if (box) { e.checked = value; } else { e.value = value; } }
      });
      network('What you had typed is here again. It is not saved yet.');
    }
    f.addEventListener('input', function () {
      var now = {};
      Array.prototype.filter.call(f.elements, entered).forEach(function (e) {
        if (e.type === 'checkbox' || e.type === 'radio') { now[e.name + '\n' + e.value] = e.checked; } else { now[e.name] = e.value; }
      });
      store(name, JSON.stringify(now));
    });
    f.addEventListener('submit', function (event) {
      event.preventDefault();
      var button = event.submitter;
      fetch(f.action, { headers: { 'Accept': 'text/html' }, cache: 'no-store', redirect: 'manual' }).then(function (there) {
        if (there.status !== 200) {
          network('You are signed out, or the server does not answer. What you typed is kept on this device. Fix: sign in again, then open this page and save.');
          return;
        }
        store(name, null);
        if (button && button.name) {
          var end = document.createElement('input');
          end.type = 'hidden';
          end.name = button.name;
          end.value = button.value;
          f.appendChild(end);
        }
        f.submit();
      }).catch(function () {
        network('No network. What you typed is kept on this device. Fix: save again when the network is back.');
      });
    });
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
          say('kept', event.data.kept === 1 ? 'This sheet is on this device: it opens without network.'
            : event.data.kept + ' pages are on this device: they open without network.');
        }
      });
      ready.active.postMessage({ user: user, keep: [window.location.pathname + window.location.search].concat(sheets) });
    }).catch(function () { /* sheets then need the network */ });
  }

  window.addEventListener('online', function () {
    sendWaiting();
    if (form() && (waiting !== null || stored(waitingName(form())) !== null)) {
      freshToken(form()).then(function () { send(form(), 'close'); }).catch(function () { later(form(), 'close'); });
    }
  });
  start(false);
  look();
  sayAsOf();
  keepSheets();
  sendWaiting();
  sendOwn();
})();
