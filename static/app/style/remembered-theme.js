/**
 * Puts the remembered choice of light or dark on the page before it is drawn, so that a dark app never flashes light. A classic
 * script, for modules run only after the first paint; `shell/theme.js` takes over from it.
 */
{
  const choice = localStorage.getItem('theme');
  if (choice === 'light' || choice === 'dark') document.documentElement.dataset.theme = choice;
}
