// How a sheet answers to what is entered: what is done and what comes next, values over their limit, labels, parts used.
(function () {
  'use strict';
  var bay = window.bay;
  var say = bay.say;

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

  bay.answer = {
    count: count, finished: finished, splitLabel: splitLabel, judge: judge, parts: parts, isDone: isDone
  };
})();
