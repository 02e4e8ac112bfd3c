// What the samples and the unit in use say, drawn: each drawing with its words and its numbers beside it.

import { askJson } from './server.js';
import { el, ruleWords } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';

function table(plot) {
  return el('div', { className: 'wide' }, el('p', {}, say('sheet.samples.rests', plot.rests)), el('table', {},
    el('thead', {}, el('tr', {}, ['statistic', 'level', 'needed'].map(c => el('th', { scope: 'col' }, say(`column.${c}`))))),
    el('tbody', {}, plot.lines.map(line => el('tr', {},
      el('th', { scope: 'row' }, line.statistic, line.governs && ` \u25C0 ${say('sheet.governs')}`),
      el('td', {}, line.level), el('td', {}, line.factor))))));
}

function drawing(plot) {
  const drawn = document.importNode(new DOMParser().parseFromString(plot.svg, 'image/svg+xml').documentElement, true);
  const name = plot.title || drawn.querySelector('title')?.textContent || plot.id;
  return el('figure', { className: 'drawing' }, plot.title && el('h4', { lang: 'en' }, plot.title), plot.lines.length > 0 && table(plot),
    el('div', { className: 'sheet-of-paper', tabIndex: 0, role: 'region', 'aria-label': name, lang: 'en' }, drawn), ruleWords('figcaption', plot.words || drawn.querySelector('desc')?.textContent || ''));
}

/** A section that fills itself when the drawings come; it stays away when the task has nothing to draw. */
export function plots() {
  const exposures = Array.isArray(state.task.exposures) ? state.task.exposures : [];
  if (!state.task.kit && !exposures.some(e => e?.samples)) return null;
  const box = el('section', {});
  askJson('api/plots', { task: state.task, language: document.documentElement.lang }, true).then(told => {
    if (told.plots.length > 0) box.replaceChildren(el('h3', {}, say('ui.plots')), ...told.plots.map(drawing));
  }, () => { /* the advice stands without its drawings */ });
  return box;
}
