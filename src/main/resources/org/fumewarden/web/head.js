// The head of a task: its name, the code that decides, and the day whose rules hold. One line, until somebody opens it.

import { change, state } from './state.js';
import { el, invalid } from './dom.js';
import { dayWords, has, say } from './words.js';
import { faultNodes } from './faults.js';

export function codeWords(code) {
  return has(`code.${code.id}`) ? say(`code.${code.id}`) : code.name;
}

function row(path, words, input) {
  return el('div', { className: 'row', 'data-path': path }, el('label', { className: 'ask', htmlFor: path }, words),
    el('div', { className: 'answer' }, input, el('p', { className: 'fault', id: `${path}-fault` })));
}

/** The folded rows. Gives their node, how to write the line anew, and how to put faults beside them. */
export function head() {
  const line = el('span', {});
  const remark = () => {
    const code = state.codes.find(c => c.id === state.task.code);
    line.textContent = [state.task.title || say('ui.title.none'), code ? codeWords(code) : state.task.code, state.task.on && dayWords(state.task.on)].filter(Boolean).join(' \u00B7 ');
  };
  const text = (path, type) => el('input', { id: path, type, value: state.task[path] ?? '', maxLength: 200, 'aria-describedby': `${path}-fault`,
    oninput: e => { change(path, e.target.value || undefined); remark(); } });
  const code = el('select', { id: 'code', 'aria-describedby': 'code-fault', onchange: e => change('code', e.target.value) },
    state.codes.map(c => el('option', { value: c.id, selected: c.id === state.task.code }, codeWords(c))));
  remark();
  const node = el('details', { className: 'head', id: 'head' }, el('summary', {}, line, ' ', el('span', { className: 'cite' }, say('ui.change.it'))),
    row('title', say('ui.title'), text('title', 'text')), row('code', say('ui.code'), code), row('on', say('ui.on'), text('on', 'date')));

  function setFaults(problems) {
    for (const spot of node.querySelectorAll('[data-path]')) {
      const found = problems.find(p => p.field === spot.dataset.path);
      spot.querySelector('.fault').replaceChildren(...(found ? faultNodes(found).filter(Boolean) : []));
      spot.classList.toggle('wrong', Boolean(found));
      invalid(spot.querySelector('input, select'), Boolean(found));
      if (found) node.open = true;
    }
  }
  return { node, remark, setFaults };
}
