// The derivation as a tree and as a table, searched by clause, exported, and decided again.

import { el, keep, ruleWords } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';
import { opening, unverified } from './advice.js';
import { keptBox } from './kept.js';
import { taskFile } from './tasks.js';
import { askText } from './server.js';

const AS_TABLE = 'table';
let shape = 'tree';
let sought = '';

/** What is sought, each a pattern: a word and the number behind it belong together, so that "reg 7" is not "reg 17". */
export function patterns(sought) {
  const escape = text => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return sought.trim().replace(/([\p{L}§.]+)\s+(?=\d)/gu, '$1\u0000').split(/\s+/).filter(Boolean).map(term => {
    const [word, number] = term.split('\u0000');
    if (number !== undefined) return new RegExp(`(^|[^\\p{L}])${escape(word)}[\\p{L}]*\\.?\\s*${escape(number)}(?![0-9])`, 'iu');
    return /^\d+$/.test(term) ? new RegExp(`(^|[^0-9])${term}(?![0-9])`, 'u') : new RegExp(escape(term), 'iu');
  });
}

function matches(step, sought) {
  const all = [step.id, step.rule, step.says, step.source, step.clause, step.subject,
    ...step.premises.flatMap(p => [p.address, p.words ?? '', `${p.source ?? ''} ${p.clause ?? ''}`])].join('\n');
  return sought.every(pattern => pattern.test(all));
}

/** The steps that no other step rests on: what the advice says. */
function roots(steps) {
  const used = new Set(steps.flatMap(s => s.premises.filter(p => p.kind === 'step').map(p => p.address)));
  return steps.filter(s => !used.has(s.id));
}

/** Steps of one rule that say the same stand together, as for each class of respirator. */
function together(steps) {
  const alike = new Map();
  for (const step of steps) {
    const key = `${step.rule} ${step.says}`;
    alike.set(key, [...(alike.get(key) ?? []), step]);
  }
  return [...alike.values()];
}

function tree(steps) {
  const groups = new Map();
  for (const step of steps) groups.set(step.phase, [...(groups.get(step.phase) ?? []), step]);
  return [...groups].map(([phase, these]) => el('section', {}, el('h3', {}, say(`phase.${phase}`)),
    el('ul', { className: 'plain' }, together(these).map(all => el('li', {}, opening(all[0], undefined, all))))));
}

function table(steps) {
  const heads = ['ui.step', 'ui.rule', 'ui.says', 'ui.clause', 'ui.confidence'];
  return el('div', { className: 'wide', tabIndex: 0, role: 'region', 'aria-label': say('ui.trail.table') }, el('table', {},
    el('thead', {}, el('tr', {}, heads.map(h => el('th', { scope: 'col' }, say(h))))),
    el('tbody', {}, steps.map(s => el('tr', {}, el('th', { scope: 'row' }, s.id), el('td', { className: 'code' }, s.rule), ruleWords('td', s.says, undefined, s.own),
      el('td', {}, `${s.source}, ${s.clause}`), el('td', {}, say(`confidence.${s['overall-confidence']}`), unverified(s['overall-confidence'] === 'memory')))))));
}

function csv(steps) {
  const cell = text => `"${/^[=+\-@\t\r]/.test(text) ? "'" : ''}${String(text).replaceAll('"', '""')}"`;
  return [['step', 'phase', 'rule', 'says', 'source', 'clause', 'edition', 'confidence'],
    ...steps.map(s => [s.id, s.phase, s.rule, s.says, s.source, s.clause, s.edition, s['overall-confidence']])]
    .map(row => row.map(cell).join(',')).join('\r\n') + '\r\n';
}

/** The file of the advice, with its values tried; the page itself has no need of that. */
async function keepAdvice() {
  try {
    keep(taskFile('json'), await askText('api/advise', { task: state.task, language: document.documentElement.lang }), 'application/json');
  } catch { /* the notice line says what happened */ }
}

export function drawTrail(root) {
  if (!state.advice) {
    root.replaceChildren(el('p', {}, say(state.problems.length ? 'ui.advice.wrong' : 'ui.deciding.first')));
    return;
  }
  const steps = state.advice.trail.steps;
  const out = el('div', {});
  const count = el('p', { className: 'hint', role: 'status' });
  const draw = () => {
    const found = sought.trim() === '' ? (shape === AS_TABLE ? steps : roots(steps)) : steps.filter(s => matches(s, patterns(sought)));
    count.textContent = say('ui.trail.count', found.length, steps.length);
    out.replaceChildren(...(shape === AS_TABLE ? [table(found)] : tree(found)));
  };
  const choice = (value, words) => el('label', { className: 'choice' }, el('input', { type: 'radio', name: 'shape', checked: shape === value,
    onchange: () => { shape = value; draw(); } }), el('span', {}, words));
  root.replaceChildren(
    el('div', { className: 'choices' }, el('label', { htmlFor: 'sought' }, say('ui.trail.search')),
      el('input', { type: 'search', id: 'sought', value: sought, maxLength: 100, oninput: e => { sought = e.target.value; draw(); } }),
      el('span', { role: 'radiogroup', 'aria-label': say('ui.trail.shape'), className: 'choices' }, choice('tree', say('ui.trail.tree')), choice(AS_TABLE, say('ui.trail.table')))),
    el('p', { className: 'tools' },
      el('button', { type: 'button', onclick: keepAdvice }, say('ui.export.json')),
      el('button', { type: 'button', onclick: () => keep(taskFile('csv'), csv(steps), 'text/csv') }, say('ui.export.csv'))),
    count, out, keptBox());
  draw();
}
