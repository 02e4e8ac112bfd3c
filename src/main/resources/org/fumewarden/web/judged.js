// One judgement for every level that is still open: by whom, on what, on which day. It is written into each of them.

import { el, fresh, invalid } from './dom.js';
import { name, state } from './state.js';
import { has, say } from './words.js';

const typed = { judged: 'below-limit', by: '', basis: '', on: '', because: '' };

function fieldOf(cell, words, made) {
  const fault = el('p', { className: 'fault', id: fresh('fault') });
  made.id = fresh('judged');
  made.setAttribute('aria-describedby', fault.id);
  return { cell, made, fault, node: el('div', { className: 'stack' }, el('label', { htmlFor: made.id }, words), made, fault) };
}

/** The box. Gives its node and how to tell it which agents are open; calls back with the agents and the cells of the judgement. */
export function judgement(write) {
  const keep = cell => event => { typed[cell] = event.target.value.trim(); };
  const box = (cell, type) => el('input', { type, value: typed[cell] || (cell === 'on' ? state.task.on : ''), maxLength: 200, oninput: keep(cell) });
  const choose = el('select', { onchange: keep('basis') }, el('option', { value: '' }, say('ui.choose')),
    state.vocabulary.bases.map(b => el('option', { value: b.id, selected: b.id === typed.basis }, has(`basis.${b.id}`) ? say(`basis.${b.id}`) : b.name)));
  const far = el('select', { onchange: keep('judged') }, state.vocabulary.bounds.map(b => el('option', { value: b, selected: b === typed.judged }, say(`bound.${b}`))));
  const fields = [fieldOf('by', say('ui.exposure.by'), box('by', 'text')), fieldOf('basis', say('ui.exposure.basis'), choose),
    fieldOf('on', say('ui.exposure.on'), box('on', 'date')), fieldOf('judged', say('ui.exposure.bound'), far), fieldOf('because', say('ui.exposure.because'), box('because', 'text'))];
  const list = el('ul', {});
  const button = el('button', { type: 'button', onclick: () => {
    const given = Object.fromEntries(fields.map(f => [f.cell, f.made.value.trim()]).filter(([, v]) => v !== ''));
    const missing = fields.filter(f => f.cell !== 'because' && !given[f.cell]);
    fields.forEach(f => {
      const lacks = missing.includes(f);
      f.fault.textContent = lacks ? say('ui.fault.missing') : '';
      invalid(f.made, lacks);
    });
    if (missing.length > 0) missing[0].made.focus();
    else write(agents, given);
  } });
  let agents = [];
  const node = el('section', { className: 'together judging', 'aria-label': say('ui.judging'), hidden: true }, el('p', {}, say('ui.judging')), list,
    el('div', { className: 'judging-in' }, fields.map(f => f.node)), el('p', {}, button));
  return { node, of(open) {
    agents = open;
    node.hidden = open.length === 0;
    list.replaceChildren(...open.map(a => el('li', {}, name(a))));
    button.textContent = say('ui.judging.write', open.length);
  } };
}
