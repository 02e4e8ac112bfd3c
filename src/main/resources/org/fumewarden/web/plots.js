// What the samples and the unit in use say, drawn: each drawing with its words and its numbers beside it.

import { askJson } from './server.js';
import { el, ruleWords } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';

const STATISTICS = { 'highest sample': 'highest-sample', 'upper limit of the 95th percentile with an assumed spread': 'assumed-spread',
  'upper limit of the 95th percentile from published studies and these samples': 'posterior',
  '95th percentile': 'percentile-95', 'upper tolerance limit 95 %, 70 % confidence': 'upper-tolerance-70',
  'upper tolerance limit 95 %, 95 % confidence': 'upper-tolerance-95', 'upper 95 % limit of the mean': 'upper-mean' };

function governs(line, rests) {
  return rests.startsWith(`${line.statistic},`) || (line.statistic === 'highest sample' && rests.startsWith('highest of '));
}

/** The statistic with its count of samples, in the words of the page. */
function rests(words) {
  const known = Object.keys(STATISTICS).find(name => words.startsWith(`${name}, `));
  if (!known) return words;
  return say('sheet.samples.count', say(`statistic.${STATISTICS[known]}`), words.slice(known.length + 2).replace(/ samples?$/, ''));
}

function table(plot) {
  return el('div', { className: 'wide' }, el('p', {}, say('sheet.samples.rests', rests(plot.rests))), el('table', {},
    el('thead', {}, el('tr', {}, ['statistic', 'level', 'needed'].map(c => el('th', { scope: 'col' }, say(`column.${c}`))))),
    el('tbody', {}, plot.lines.map(line => el('tr', {},
      el('th', { scope: 'row' }, STATISTICS[line.statistic] ? say(`statistic.${STATISTICS[line.statistic]}`) : line.statistic, governs(line, plot.rests) && ` \u25C0 ${say('sheet.governs')}`),
      el('td', {}, String(Number(Number(line.level).toPrecision(4)))), el('td', {}, line.factor))))));
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
  askJson('api/plots', { task: state.task }, true).then(told => {
    if (told.plots.length > 0) box.replaceChildren(el('h3', {}, say('ui.plots')), ...told.plots.map(drawing));
  }, () => { /* the advice stands without its drawings */ });
  return box;
}
