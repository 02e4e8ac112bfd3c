// A training round: the task without its advice, five answers, and each mark with its reason.

import { askJson } from './server.js';
import { el, fresh, ruleWords } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';

const PARTS = ['factor', 'class', 'filter', 'first', 'second'];
let rounds = [];

function taskOf(id) {
  return id === '' ? state.task : state.starts.find(s => s.id === id).task;
}

function answerField(part, told) {
  const id = fresh('drill');
  const box = part === 'class'
    ? el('select', { id }, el('option', { value: '' }, say('ui.choose')), el('option', { value: 'none' }, say('ui.drill.none')),
      told.classes.map(c => el('option', { value: c.id, lang: 'en' }, `${c.id}: ${c.name}`)))
    : el('input', { id, type: 'text', maxLength: 300, autocomplete: 'off' });
  return { box, node: el('div', { className: 'row' }, el('label', { className: 'ask', htmlFor: id }, say(`ui.drill.${part}`)), el('div', { className: 'answer' }, box)) };
}

function marks(told) {
  return el('ol', { className: 'marks' }, told.marks.map((m, i) => el('li', { className: m.right ? 'right' : 'not-right' },
    el('b', {}, `${m.right ? '\u2713' : '\u2715'} ${say(m.right ? 'ui.drill.right' : 'ui.drill.not')} `), say(`ui.drill.${PARTS[i]}`), ': ',
    el('q', {}, m.given), ' ', ruleWords('span', m.because))));
}

/** The story as the server tells it, a line each, set as a heading and a list. */
function story(text) {
  const lines = text.split('\n').map(l => l.trim()).filter(l => l !== '' && !/^=+$/.test(l));
  const given = lines.filter(l => l.startsWith('- ')).map(l => l.slice(2));
  const rest = lines.filter(l => !l.startsWith('- '));
  return el('section', { className: 'story', lang: 'en', 'aria-label': say('ui.drill.story') }, el('h3', {}, rest[0] ?? ''),
    rest.slice(1, -1).map(l => el('p', {}, l)), el('ul', {}, given.map(l => el('li', {}, l))), el('p', { className: 'cite' }, rest.length > 1 ? rest[rest.length - 1] : ''));
}

async function round(id, out) {
  const task = taskOf(id);
  const asked = { task, story: String(task.because ?? '') };
  const told = await askJson('api/drill', asked);
  const fields = PARTS.map(part => answerField(part, told));
  const result = el('div', { role: 'status' });
  const button = el('button', { type: 'submit' }, say('ui.drill.mark'));
  out.replaceChildren(story(told.story), el('form', { onsubmit: async event => {
    event.preventDefault();
    try {
      const marked = await askJson('api/drill', { ...asked, answers: fields.map(f => f.box.value) });
      const right = marked.marks.filter(m => m.right).length;
      rounds.push({ right, of: marked.marks.length });
      button.disabled = true;
      result.replaceChildren(marks(marked), el('p', { className: 'lead' }, say('ui.drill.score', right, marked.marks.length)),
        el('p', {}, say('ui.drill.total', rounds.reduce((s, r) => s + r.right, 0), rounds.reduce((s, r) => s + r.of, 0), rounds.length)), el('p', {}, say('closing')));
    } catch { /* the notice line says what happened */ }
  } }, fields.map(f => f.node), button), result);
  fields[0].box.focus();
}

export function drawDrill(root) {
  const out = el('div', {});
  const choose = el('select', { id: 'round' }, state.starts.map(s => el('option', { value: s.id, lang: 'en' }, s.title)),
    el('option', { value: '' }, say('ui.drill.current')));
  root.replaceChildren(el('p', { className: 'hint' }, say('ui.drill.hint')),
    el('div', { className: 'choices' }, el('label', { htmlFor: 'round' }, say('ui.drill.which')), choose,
      el('button', { type: 'button', onclick: () => round(choose.value, out).catch(fault => out.replaceChildren(
        ...(fault.problems ?? []).map(p => el('p', { className: 'fault' }, `${p.field} ${p.message}`)))) }, say('ui.drill.begin'))),
    out);
}
