// Sends what was entered: at once, or when the network is back, each form once. What the server refuses is shown beside its field.
(function () {
  'use strict';
  var RETRY_MS = 15000;
  var bay = window.bay;
  var say = bay.say;
  var store = bay.store;
  var stored = bay.stored;
  var waiting = null;

  function network(words) { say('network', words); }

  // A button of a form: its name and value go with what was entered.
  function ofButton(button) { return button && button.name ? { name: button.name, value: button.value } : null; }

  function bodyOf(f, press) {
    var body = new URLSearchParams(new FormData(f));
    if (press) { body.append(press.name, press.value); }
    return body;
  }

  // Where the server leads who was heard: to the sheet, the diagnosis, or the choice of what is replaced.
  function heard(answer) { return answer.redirected && /^\/(bay|start)(\/|$)/.test(new URL(answer.url).pathname); }

  function send(f, press) {
    clearTimeout(waiting);
    waiting = null;
    bay.save(f, true);
    var buttons = f.querySelectorAll('button[type=submit], .button.main');
    var busy = function (now) { buttons.forEach(function (each) { each.disabled = now; }); };
    busy(true);
    return fetch(f.action, { method: 'POST', body: bodyOf(f, press), headers: { 'Accept': 'text/html' } }).then(function (answer) {
      busy(false);
      if (heard(answer)) {
        bay.dropDraft(f);
        store(waitingName(f), null);
        window.location.assign(answer.url);
      } else if (answer.redirected || answer.status === 401 || answer.status === 403) {
        network('You are signed out. What you typed is kept on this device. Fix: sign in again, then open this page and save.');
      } else if (answer.status === 200 || answer.status === 422) {
        if (answer.status === 422) { refused(waitingName(f)); }
        return answer.text().then(show);
      } else if (answer.status >= 502 && answer.status <= 504) {
        later(f, press);
      } else {
        network('The server could not save it (' + answer.status + '). What you typed is kept on this device. Fix: try again; if it stays so, tell the manager.');
      }
      return undefined;
    }).catch(function () {
      busy(false);
      later(f, press);
    });
  }

  // What waits to be sent outlives this page, and the phone being switched off.
  function waitingName(f) { return 'bay waiting ' + bay.nameOf(f); }

  function refused(name) {
    var left = JSON.parse(stored(name) || 'null');
    if (left) {
      left.refused = true;
      store(name, JSON.stringify(left));
    }
  }

  function later(f, press) {
    if (press && press.value === 'check') { return; }
    store(waitingName(f), JSON.stringify({ body: bodyOf(f, press).toString(), path: bay.pathOf(f), truck: f.getAttribute('data-truck'), press: press }));
    network('No network. What you typed is kept on this device, and is sent when the network is back.');
    waiting = setTimeout(function () { send(f, press); }, RETRY_MS);
  }

  // The server's page takes the place of this one, with the sentence beside each field.
  function show(text) {
    var page = new DOMParser().parseFromString(text, 'text/html');
    var now = page.querySelector('main');
    if (!now) { return; }
    document.querySelector('main').replaceWith(document.importNode(now, true));
    bay.start(true);
    window.dispatchEvent(new Event('bay-shown'));
    var wrong = document.getElementById('wrong');
    if (wrong) { wrong.focus(); wrong.scrollIntoView(); } else { window.scrollTo(0, 0); }
  }

  // What others typed here waits for them.
  function ofOthers() {
    return bay.names('bay waiting ').filter(function (name) { return name.indexOf('bay waiting ' + bay.user + ' ') !== 0; }).map(function (name) {
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
    var f = bay.form();
    var own = bay.names('bay waiting ' + bay.user + ' ').filter(function (name) { return !f || waitingName(f) !== name; });
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
        if (!answer) { return; }
        if (heard(answer)) {
          var where = new URL(answer.url);
          var chosen = where.pathname.indexOf('/start') === 0;
          store(name, null);
          store(name.replace('bay waiting ', 'close-out '), null);
          said.push(chosen ? { words: kept.truck + ': sent and saved. Next: choose what is replaced.', path: where.pathname + where.search, truck: kept.truck }
            : { words: kept.truck + ': sent and saved.' });
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

  // A page whose entries wait: sent from here, and what the server refuses is shown beside its field. With the key that they
  // were first sent with: if they had arrived after all, they are not kept twice.
  function sendOwn() {
    var f = bay.form();
    var left = f && JSON.parse(stored(waitingName(f)) || 'null');
    if (!left || document.getElementById('wrong')) { return; }
    if (f.elements.formKey) { f.elements.formKey.value = new URLSearchParams(left.body).get('formKey'); }
    var press = left.press || { name: 'do', value: 'close' };
    fetch(f.action, { headers: { 'Accept': 'text/html' }, cache: 'no-store' }).then(function (page) {
      if (page.redirected) { throw new Error('signed out'); }
      return page.text();
    }).then(function (text) {
      var token = new DOMParser().parseFromString(text, 'text/html').querySelector('input[name=_csrf]');
      if (token && f.elements._csrf) { f.elements._csrf.value = token.value; }
      return send(f, press);
    }).catch(function () { later(f, press); });
  }

  bay.send = send;
  bay.ofButton = ofButton;
  bay.sendAll = function () {
    sendWaiting();
    sendOwn();
  };
  window.addEventListener('online', bay.sendAll);
})();
