// Reads labels and serials with the phone's camera into the field beside the button. Without a camera, people type.
(function () {
  'use strict';
  var ZXING = '/zxing/zxing-0.23.0.min.js';
  var loading = null;

  function decoder() {
    if (window.ZXing) { return Promise.resolve(window.ZXing); }
    if (!loading) {
      loading = new Promise(function (ready, failed) {
        var script = document.createElement('script');
        script.src = ZXING;
        script.onload = function () { ready(window.ZXing); };
        script.onerror = failed;
        document.head.appendChild(script);
      });
    }
    return loading;
  }

  // What a picture says: by the device's own reader where it has one, else by the library.
  function reader() {
    if (!('BarcodeDetector' in window)) { return ofLibrary(); }
    return window.BarcodeDetector.getSupportedFormats().then(function (formats) {
      if (!formats.length) { return ofLibrary(); }
      var own = new window.BarcodeDetector({ formats: formats });
      var failed = null;
      return function (canvas) {
        if (failed) { return failed.then(function (read) { return read(canvas); }); }
        return own.detect(canvas).then(function (found) { return found.length ? found[0].rawValue : null; }).catch(function () {
          failed = ofLibrary();
          return failed.then(function (read) { return read(canvas); });
        });
      };
    }).catch(ofLibrary);
  }

  function ofLibrary() {
    return decoder().then(function (zxing) {
      var multi = new zxing.MultiFormatReader();
      multi.setHints(new Map([[zxing.DecodeHintType.TRY_HARDER, true]]));
      return function (canvas) {
        try {
          var source = new zxing.HTMLCanvasElementLuminanceSource(canvas);
          return Promise.resolve(multi.decodeWithState(new zxing.BinaryBitmap(new zxing.HybridBinarizer(source))).getText());
        } catch (e) { return Promise.resolve(null); }
      };
    });
  }

  // What a canvas says, or nothing: for whoever has a picture already.
  window.readLabel = function (canvas) { return reader().then(function (read) { return read(canvas); }); };

  function overlay(words) {
    var box = document.createElement('div');
    box.className = 'scanner';
    box.setAttribute('role', 'dialog');
    box.setAttribute('aria-label', words);
    var say = document.createElement('p');
    say.textContent = words;
    say.setAttribute('role', 'status');
    var video = document.createElement('video');
    video.setAttribute('playsinline', '');
    var stop = document.createElement('button');
    stop.type = 'button';
    stop.className = 'button';
    stop.textContent = 'Stop, I will type it';
    box.appendChild(say);
    box.appendChild(video);
    box.appendChild(stop);
    return { box: box, video: video, stop: stop, say: say };
  }

  function fill(field, text, then) {
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    field.dispatchEvent(new Event('change', { bubbles: true }));
    if (then === 'submit') { field.form.requestSubmit(); } else { field.focus(); }
  }

  function scan(button) {
    var field = document.getElementById(button.getAttribute('data-scan'));
    var shown = overlay('Hold the label or the injector’s code before the camera.');
    var open = true;
    var stream = null;
    function close() {
      open = false;
      if (stream) { stream.getTracks().forEach(function (track) { track.stop(); }); }
      shown.box.remove();
      button.focus();
    }
    shown.stop.addEventListener('click', close);
    document.body.appendChild(shown.box);
    shown.stop.focus();
    Promise.all([navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } }), reader()]).then(function (both) {
      stream = both[0];
      if (!open) { close(); return; }
      shown.video.srcObject = stream;
      shown.video.play();
      var canvas = document.createElement('canvas');
      (function look() {
        if (!open) { return; }
        if (!shown.video.videoWidth) { setTimeout(look, 100); return; }
        canvas.width = shown.video.videoWidth;
        canvas.height = shown.video.videoHeight;
        canvas.getContext('2d', { willReadFrequently: true }).drawImage(shown.video, 0, 0);
        both[1](canvas).then(function (text) {
          if (!open) { return; }
          if (text) { close(); fill(field, text.trim(), button.getAttribute('data-then')); } else { setTimeout(look, 150); }
        }).catch(function () {
          shown.say.textContent = 'Labels cannot be read on this device. Fix: type it.';
        });
      })();
    }).catch(function () {
      if (!open) { return; }
      shown.say.textContent = 'No camera here, or the browser was not allowed to use it. Fix: type it, or allow the camera for this page.';
    });
  }

  // Photographs are made smaller here: what a canvas draws has no place, no time and no camera in it.
  var MOST_PIXELS = 1600;
  function shrink(file) {
    return createImageBitmap(file).then(function (picture) {
      var scale = Math.min(1, MOST_PIXELS / Math.max(picture.width, picture.height));
      var canvas = document.createElement('canvas');
      canvas.width = Math.max(1, Math.round(picture.width * scale));
      canvas.height = Math.max(1, Math.round(picture.height * scale));
      canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
      return new Promise(function (ready) { canvas.toBlob(ready, 'image/jpeg', 0.82); });
    });
  }

  function photos(form) {
    var input = form.querySelector('input[type=file]');
    if (!input || !window.createImageBitmap) { return; }
    input.addEventListener('change', function () {
      if (!input.files.length) { return; }
      shrink(input.files[0]).then(function (small) {
        var files = new DataTransfer();
        files.items.add(new File([small], 'photo.jpg', { type: 'image/jpeg' }));
        input.files = files.files;
        form.requestSubmit();
      }).catch(function () { form.requestSubmit(); });
    });
  }

  function start() {
    var camera = navigator.mediaDevices && navigator.mediaDevices.getUserMedia;
    document.querySelectorAll('[data-scan]').forEach(function (button) {
      if (camera && !button.hasAttribute('data-ready')) {
        button.hidden = false;
        button.setAttribute('data-ready', '');
        button.addEventListener('click', function () { scan(button); });
      }
    });
    document.querySelectorAll('form.photo-form').forEach(photos);
  }
  window.addEventListener('bay-shown', start);
  start();
})();
