// The derivation as a tree and as a table, searched by clause; replayed; exported.

import { askJson } from './server.js';
import { el, fileName, keep, ruleWords } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';
import { opening, unverified } from './advice.js';

const AS_TABLE = 'table';
let shape = 'tree';
let sought = '';

function matches(step, words) {
  const all = [step.id, step.rule, step.says, step.source, step.clause, step.subject,
    ...step.premises.flatMap(p => [p.address, p.words ?? '', p.source ?? '', p.clause ?? ''])].join('\n').toLowerCase();
  return words.toLowerCase().split(/\s+/).every(w => all.includes(w));
}

/** The steps that no other step rests on: what the advice says. */
function roots(steps) {
  const used = new Set(steps.flatMap(s => s.premises.filter(p => p.kind === 'step').map(p => p.address)));
  return steps.filter(s => !used.has(s.id));
}

function tree(steps) {
  const groups = new Map();
  for (const step of steps) groups.set(step.phase, [...(groups.get(step.phase) ?? []), step]);
  return [...groups].map(([phase, these]) => el('section', {}, el('h3', {}, say(`phase.${phase}`)),
    el('ul', { className: 'plain' }, these.map(s => el('li', {}, opening(s))))));
}

function table(steps) {
  const heads = ['ui.step', 'ui.rule', 'ui.says', 'ui.clause', 'ui.confidence'];
  return el('div', { className: 'wide', tabIndex: 0, role: 'region', 'aria-label': say('ui.trail.table') }, el('table', {},
    el('thead', {}, el('tr', {}, heads.map(h => el('th', { scope: 'col' }, say(h))))),
    el('tbody', {}, steps.map(s => el('tr', {}, el('th', { scope: 'row' }, s.id), el('td', { className: 'code' }, s.rule), ruleWords('td', s.says),
      el('td', {}, `${s.source}, ${s.clause}`), el('td', {}, say(`confidence.${s['overall-confidence']}`), unverified(s['overall-confidence'] === 'memory')))))));
}

function csv(steps) {
  const cell = text => `"${/^[=+\-@\t\r]/.test(text) ? "'" : ''}${String(text).replaceAll('"', '""')}"`;
  return [['step', 'phase', 'rule', 'says', 'source', 'clause', 'edition', 'confidence'],
    ...steps.map(s => [s.id, s.phase, s.rule, s.says, s.source, s.clause, s.edition, s['overall-confidence']])]
    .map(row => row.map(cell).join(',')).join('\r\n') + '\r\n';
}

function replayBox() {
  const out = el('div', { role: 'status' });
  const run = async text => {
    out.replaceChildren(say('ui.working'));
    try {
      const told = await askJson('api/replay', { task: state.task, advice: text });
      out.replaceChildren(told.same
        ? el('p', { className: 'good' }, `\u2713 ${say('ui.replay.same', told.steps, told.revision.slice(0, 16))}`)
        : el('div', { className: 'fault' }, el('p', {}, `\u2715 ${say('ui.replay.other', told.line)}`),
          el('p', {}, `${say('ui.was')} `, el('code', {}, told.then)), el('p', {}, `${say('ui.is')} `, el('code', {}, told.now))));
    } catch {
      out.replaceChildren();
    }
  };
  const file = el('input', { type: 'file', id: 'advice-file', accept: '.json', onchange: async () => file.files[0] && run(await file.files[0].text()) });
  return el('section', { className: 'boxed' }, el('h3', {}, say('ui.replay')), el('p', { className: 'hint' }, say('ui.replay.hint')),
    el('p', { className: 'tools' }, el('button', { type: 'button', onclick: () => run(state.raw) }, say('ui.replay.run'))),
    el('label', { className: 'stack', htmlFor: 'advice-file' }, say('ui.replay.file')), file, out);
}

export function drawTrail(root) {
  if (!state.advice) {
    root.replaceChildren(el('p', {}, say('ui.advice.none')));
    return;
  }
  const steps = state.advice.trail.steps;
  const out = el('div', {});
  const count = el('p', { className: 'hint', role: 'status' });
  const draw = () => {
    const found = sought.trim() === '' ? (shape === AS_TABLE ? steps : roots(steps)) : steps.filter(s => matches(s, sought.trim()));
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
      el('button', { type: 'button', onclick: () => keep(fileName(state.advice.title, 'json'), state.raw, 'application/json') }, say('ui.export.json')),
      el('button', { type: 'button', onclick: () => keep(fileName(state.advice.title, 'csv'), csv(steps), 'text/csv') }, say('ui.export.csv'))),
    count, out, replayBox());
  draw();
}
