// Where a task comes from: an empty one, an example chosen on purpose, a file, or the list kept in this browser.

import { askJson, askText, tell } from './server.js';
import { el, keep } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';
import { beginTask, emptyTask, takeTasks, taskFile, tasksBox } from './tasks.js';
import { faultWords } from './faults.js';

async function open(file, out) {
  const chosen = file.files[0];
  if (!chosen) return;
  const text = await chosen.text();
  out.replaceChildren();
  try {
    const several = chosen.name.endsWith('.json') && JSON.parse(text);
    if (Array.isArray(several?.tasks)) {
      takeTasks(several.tasks.filter(t => t && typeof t === 'object' && !Array.isArray(t)));
      tell(say('ui.tasks.taken', several.tasks.length));
      return;
    }
  } catch { /* no JSON: the server reads it and says what is wrong */ }
  try {
    const told = await askJson('api/open', { text });
    beginTask(told.task, say('ui.undo.opened', told.task.title || chosen.name));
    if (told.comments) tell(say('ui.comments'));
  } catch (fault) {
    out.replaceChildren(...(fault.problems ?? []).map(p => el('p', { className: 'fault' }, `${chosen.name}${p.line ? `, ${say('ui.line', p.line)}` : ''} ${p.field}: ${faultWords(p)}`)));
  }
}

async function save() {
  try {
    keep(taskFile('yaml'), await askText('api/save', { task: state.task }), 'application/yaml');
  } catch { /* the notice line says what happened */ }
}

function beginWith(id) {
  const start = state.starts.find(s => s.id === id);
  beginTask(start ? { ...structuredClone(start.task), title: startName(start), on: state.today } : emptyTask(), say('ui.undo.begun', start ? startName(start) : say('ui.start.blank')));
}

function startName(start) {
  return say(`start.${start.id}`);
}

/** The folded box above the steps. */
export function begin() {
  const out = el('div', { role: 'alert' });
  const choose = el('select', { id: 'start' }, el('option', { value: '' }, say('ui.start.blank')),
    state.starts.map(s => el('option', { value: s.id }, startName(s))));
  const file = el('input', { type: 'file', id: 'file', accept: '.yaml,.yml,.json', onchange: () => open(file, out) });
  return el('details', { className: 'starts' }, el('summary', {}, say('ui.start.other')),
    el('div', { className: 'starts-in' },
      el('div', {}, el('label', { htmlFor: 'start' }, say('ui.start')), el('div', { className: 'choices' }, choose,
        el('button', { type: 'button', id: 'begin', onclick: () => beginWith(choose.value) }, say('ui.start.go')))),
      el('div', {}, el('label', { htmlFor: 'file' }, say('ui.open')), file),
      el('div', {}, el('button', { type: 'button', onclick: save }, say('ui.save')))),
    out, tasksBox());
}

