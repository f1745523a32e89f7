// The key "/" goes to the search of the whole site, unless something is being typed. Without this script, the field is a Tab away.
'use strict';
document.addEventListener('keydown', function (event) {
  const at = document.activeElement;
  const types = at && (at.matches('input, select, textarea') || at.isContentEditable);
  const field = document.getElementById('site-q');
  if (event.key === '/' && field && !types && !event.ctrlKey && !event.metaKey && !event.altKey) {
    event.preventDefault();
    field.focus();
    field.select();
  }
});
