// Moves a visit on the week's board: by pointer onto another day, or from its "Move" link with the arrow keys and Enter.
// Nothing is kept here: the page that opens shows what the move means, and keeps it only when asked.
'use strict';
(function () {
  const says = document.getElementById('board-says');
  const days = function (cell) {
    return Array.from(cell.parentElement.querySelectorAll('[data-day]'));
  };
  const open = function (visit, day) {
    const link = visit.querySelector('a.move');
    const to = new URL(link.href, window.location.href);
    to.searchParams.set('day', day);
    window.location.assign(to.toString());
  };

  document.querySelectorAll('[data-truck]').forEach(function (visit) {
    visit.addEventListener('dragstart', function (event) {
      event.dataTransfer.setData('text/plain', visit.dataset.truck);
      event.dataTransfer.effectAllowed = 'move';
      visit.classList.add('dragged');
    });
    visit.addEventListener('dragend', function () {
      visit.classList.remove('dragged');
    });
  });

  document.querySelectorAll('[data-day]').forEach(function (cell) {
    cell.addEventListener('dragover', function (event) {
      const visit = document.querySelector('.dragged');
      if (visit && visit.closest('tr') === cell.parentElement) {
        event.preventDefault();
        cell.classList.add('drop-here');
      }
    });
    cell.addEventListener('dragleave', function () {
      cell.classList.remove('drop-here');
    });
    cell.addEventListener('drop', function (event) {
      const visit = document.querySelector('.dragged');
      cell.classList.remove('drop-here');
      if (visit) {
        event.preventDefault();
        open(visit, cell.dataset.day);
      }
    });
  });

  document.querySelectorAll('a.move').forEach(function (link) {
    const visit = link.closest('[data-truck]');
    const cell = link.closest('[data-day]');
    let wanted = visit ? visit.dataset.from : '';
    link.addEventListener('keydown', function (event) {
      if (!visit || !cell || (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight')) {
        return;
      }
      event.preventDefault();
      const all = days(cell).map(function (each) { return each.dataset.day; });
      const next = all.indexOf(wanted) + (event.key === 'ArrowRight' ? 1 : -1);
      if (next >= 0 && next < all.length) {
        wanted = all[next];
        const to = new URL(link.href, window.location.href);
        to.searchParams.set('day', wanted);
        link.href = to.toString();
        says.textContent = visit.dataset.truck + ' to ' + wanted + ': press Enter to see what that means.';
      }
    });
  });
}());
