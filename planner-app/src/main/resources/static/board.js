// Moves a visit on the week's board: by pointer onto another day or bay, or from its "Move" link with the arrow keys and Enter.
// Nothing is kept here: the page that opens shows what the move means, and keeps it only when asked.
'use strict';
(function () {
  const says = document.getElementById('board-says');
  // The places of a depot where work can stand, by bay and day.
  const places = function (cell) {
    return Array.from(cell.closest('table').querySelectorAll('[data-day]'));
  };
  const aim = function (link, cell) {
    const to = new URL(link.href, window.location.href);
    to.searchParams.set('day', cell.dataset.day);
    to.searchParams.set('bay', cell.dataset.bay);
    link.href = to.toString();
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
      if (visit && visit.closest('table') === cell.closest('table')) {
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
        const link = visit.querySelector('a.move');
        aim(link, cell);
        window.location.assign(link.href);
      }
    });
  });

  const steps = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  document.querySelectorAll('a.move').forEach(function (link) {
    const visit = link.closest('[data-truck]');
    let at = link.closest('[data-day]');
    link.addEventListener('keydown', function (event) {
      const step = steps[event.key];
      if (!visit || !at || !step) {
        return;
      }
      event.preventDefault();
      const all = places(at);
      const days = Array.from(new Set(all.map(function (each) { return each.dataset.day; })));
      const day = days[days.indexOf(at.dataset.day) + step[0]];
      const bay = String(Number(at.dataset.bay) + step[1]);
      const next = all.find(function (each) { return each.dataset.day === day && each.dataset.bay === bay; });
      if (next) {
        at = next;
        aim(link, at);
        says.textContent = visit.dataset.truck + ' to ' + (next.dataset.words || day) + ', bay ' + bay + ': press Enter to preview.';
      }
    });
  });
}());
