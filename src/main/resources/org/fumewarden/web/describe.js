// The task as a form: only the questions that matter for what was answered so far, each with "unknown".

import { askJson, askText, tell } from './server.js';
import { at, change, replaceTask, state } from './state.js';
import { el, fileName, keep } from './dom.js';
import { has, say } from './words.js';
import { field } from './field.js';
import { exposures } from './exposures.js';

const ALWAYS = ['process', 'base-metal', 'coating', 'place', 'extraction'];

let fields = [];
let measured = null;
let everything = false;
let faults = null;

function headRows() {
  const code = el('select', { id: 'code', onchange: e => change('code', e.target.value) },
    state.codes.map(c => el('option', { value: c.id, selected: c.id === state.task.code, lang: 'en' }, `${c.id}: ${c.name}`)));
  const simple = (path, id, type, words) => el('div', { className: 'row', 'data-path': path },
    el('label', { className: 'ask', htmlFor: id }, words),
    el('div', { className: 'answer' }, el('input', { id, type, value: state.task[path] ?? '', maxLength: 200, 'aria-describedby': `${id}-fault`,
      oninput: e => change(path, e.target.value || undefined) }), el('p', { className: 'fault', id: `${id}-fault` })));
  return el('fieldset', { className: 'group' }, el('legend', {}, say('group.head')),
    simple('title', 'title', 'text', say('ui.title')),
    el('div', { className: 'row', 'data-path': 'code' }, el('label', { className: 'ask', htmlFor: 'code' }, say('ui.code')),
      el('div', { className: 'answer' }, code, el('p', { className: 'fault' }))),
    simple('on', 'on', 'date', say('ui.on')));
}

/** The groups in the order of the questions, what was measured after the air. */
function groups() {
  const found = [...new Set(state.vocabulary.questions.map(q => q.group))];
  const air = found.indexOf('atmosphere');
  found.splice(air < 0 ? found.length : air + 1, 0, 'exposures');
  return found;
}

function group(id) {
  if (id === 'exposures') return measured.node;
  const mine = state.vocabulary.questions.filter(q => q.group === id);
  const made = mine.map(q => field(q, at(state.task, q.path), value => change(q.path, value)));
  fields.push(...made);
  return el('fieldset', { className: 'group', 'data-group': id }, el('legend', {}, has(`group.${id}`) ? say(`group.${id}`) : id), made.map(f => f.node));
}

function starts() {
  const choose = el('select', { id: 'start' }, el('option', { value: '' }, say('ui.start.blank')),
    state.starts.map(s => el('option', { value: s.id, lang: 'en' }, s.title)));
  const file = el('input', { type: 'file', id: 'file', accept: '.yaml,.yml,.json', onchange: () => open(file) });
  return el('div', { className: 'starts' },
    el('div', {}, el('label', { htmlFor: 'start' }, say('ui.start')), el('div', { className: 'choices' }, choose,
      el('button', { type: 'button', onclick: () => begin(choose.value) }, say('ui.start.go')))),
    el('div', {}, el('label', { htmlFor: 'file' }, say('ui.open')), file),
    el('div', {}, el('button', { type: 'button', onclick: save }, say('ui.save'))));
}

function begin(id) {
  const start = state.starts.find(s => s.id === id);
  replaceTask(start ? structuredClone(start.task) : { title: say('ui.title.new'), code: state.task.code, on: state.today });
}

async function open(file) {
  const chosen = file.files[0];
  if (!chosen) return;
  try {
    const told = await askJson('api/open', { text: await chosen.text() });
    replaceTask(told.task);
    if (told.comments) tell(say('ui.comments'));
  } catch (fault) {
    showFaults(fault.problems ?? []);
  }
}

async function save() {
  try {
    keep(fileName(state.task.title ?? '', 'yaml'), await askText('api/save', { task: state.task }), 'application/yaml');
  } catch { /* the notice line says what happened */ }
}

/** Builds the form anew: at the start, and when another task, code or language comes. */
export function drawDescribe(root) {
  fields = [];
  measured = exposures(list => change('exposures', list));
  faults = el('div', { className: 'faults', role: 'alert' });
  const all = el('label', { className: 'choice' }, el('input', { type: 'checkbox', checked: everything, onchange: e => {
    everything = e.target.checked;
    show();
  } }), el('span', {}, say('ui.everything')));
  root.replaceChildren(el('p', { className: 'hint' }, say('ui.describe.hint')), starts(), faults, headRows(), ...groups().map(group),
    el('p', {}, all), el('p', { className: 'hint', id: 'left-out' }));
  refresh();
}

/** Shows the questions that matter; what is answered never disappears. */
function show() {
  const open = new Set((state.advice?.questions ?? []).map(q => q.question));
  let hidden = 0;
  for (const f of fields) {
    const id = f.question.id;
    const matters = everything || at(state.task, f.question.path) !== undefined || open.has(id) || ALWAYS.includes(id)
      || (state.matters ?? []).includes(id) || f.node.contains(document.activeElement);
    f.node.hidden = !matters;
    hidden += matters ? 0 : 1;
  }
  for (const box of document.querySelectorAll('#describe fieldset[data-group]')) {
    box.hidden = [...box.querySelectorAll('.row')].every(r => r.hidden);
  }
  const left = document.getElementById('left-out');
  if (left) left.textContent = hidden > 0 ? say('ui.left-out', hidden) : '';
}

function showFaults(problems) {
  const rest = [];
  for (const f of fields) f.setFault(problems.find(p => p.field === f.question.path));
  for (const place of document.querySelectorAll('#describe [data-path] > .answer > .fault, #describe p.fault[data-path]')) {
    const path = place.dataset.path ?? place.closest('[data-path]').dataset.path;
    if (fields.some(f => f.question.path === path)) continue;
    const found = problems.find(p => p.field === path || p.field.startsWith(`${path}.`));
    place.textContent = found ? `${found.message} ${say('ui.maybe', found.maybe)}` : '';
    place.closest('[data-path]').classList.toggle('wrong', Boolean(found));
  }
  for (const p of problems) {
    const near = [...document.querySelectorAll('#describe .fault')].some(f => f.textContent.startsWith(p.message));
    if (!near) rest.push(p);
  }
  faults.replaceChildren(...rest.map(p => el('p', {}, `${p.line ? `${say('ui.line', p.line)} ` : ''}${p.field} ${p.message} ${say('ui.maybe', p.maybe)}`)));
}

/** Puts faults, reasons and suggestions beside the fields after each decision, and leaves what is being typed alone. */
export function refresh() {
  if (!faults) return;
  showFaults(state.problems);
  const open = new Map((state.advice?.questions ?? []).map(q => [q.question, q.reasons]));
  for (const f of fields) f.setReasons(open.get(f.question.id) ?? []);
  measured.suggest();
  show();
}
