// What is typed at the truck, kept on this device: by its person, truck and job, until the server has it. A close-out and a
// diagnosis are kept the same way. The other scripts of the bay take from here what they share.
(function () {
  'use strict';
  // Who is signed in: what another typed on this device is neither shown nor sent in this one's name.
  var user = encodeURIComponent(document.currentScript.getAttribute('data-user') || '');

  function form() { return document.querySelector('form.close-out, form.look-form'); }
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

  window.bay = {
    user: user, form: form, pathOf: pathOf, nameOf: nameOf, names: names, store: store, stored: stored, save: save, restore: restore,
    dropKept: dropKept, dropDraft: function (f) { store(draftName(f), null); }, say: say
  };
})();
