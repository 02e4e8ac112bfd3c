// Puts an item into the register: what it is, then only the fields of that kind.

import { askJson, Problems } from './server.js';
import { el, fresh } from './dom.js';
import { remembered } from './state.js';
import { has, say } from './words.js';
import { choiceField, fieldRow, show } from './entry.js';

function factRow(fact) {
  const words = value => (has(`fact.${fact.name}.${value}`) ? say(`fact.${fact.name}.${value}`) : ({ true: say('ui.yes'), false: say('ui.no') }[value] ?? value));
  const id = fresh('fact');
  const made = choiceField([...fact.values.map(v => [v, words(v)]), ['', say('ui.unknown')]], '', () => {})(id, '');
  return { name: fact.name, value: made.value, focus: () => made.input.focus(), setFault() {},
    node: el('div', { className: 'row' }, el('div', { className: 'ask', id }, has(`fact.${fact.name}`) ? say(`fact.${fact.name}`) : fact.name), el('div', { className: 'answer' }, made.node)) };
}

/** The form; calls back with the id of what was registered. */
export function registerBox(kinds, written) {
  const kindId = fresh('kind');
  const fields = el('div', {});
  const result = el('div', { role: 'alert' });
  const button = el('button', { type: 'submit', className: 'large', hidden: true }, say('ui.register.write'));
  const choose = el('select', { id: kindId, onchange: draw }, el('option', { value: '' }, say('ui.choose')), kinds.map(k => el('option', { value: k.id }, say(`kind.${k.id}`))));
  let rows = [];
  function draw() {
    const kind = kinds.find(k => k.id === choose.value);
    button.hidden = !kind;
    result.replaceChildren();
    rows = kind ? [...kind.fields.filter(f => f.needed), ...kind.fields.filter(f => !f.needed)].map(f => fieldRow(f, '', () => {})) : [];
    const facts = kind ? kind.facts.map(factRow) : [];
    fields.replaceChildren(...rows.map(r => r.node), ...(facts.length ? [el('p', { className: 'hint' }, say('ui.register.facts'))] : []), ...facts.map(r => r.node));
    rows.push(...facts);
    rows[0]?.focus();
  }
  async function send(sure) {
    result.replaceChildren();
    rows.forEach(r => r.setFault(''));
    const by = remembered('by');
    if (!by) {
      document.querySelector('.who input')?.focus();
      result.replaceChildren(el('p', { className: 'fault' }, say('ui.who.first')));
      return;
    }
    try {
      const told = await askJson('api/register', { kind: choose.value, by, sure, values: Object.fromEntries(rows.map(r => [r.name, r.value()]).filter(([, v]) => v !== '')) });
      choose.value = '';
      draw();
      written(told.item);
    } catch (fault) {
      if (fault instanceof Problems) show(fault.problems, rows, result, () => send(true));
      else result.replaceChildren(el('p', { className: 'fault' }, say('ui.upkeep.unsure')));
    }
  }
  return el('details', { className: 'more', id: 'register' }, el('summary', {}, say('ui.register')),
    el('form', { noValidate: true, onsubmit: event => { event.preventDefault(); send(false); } },
      el('p', { className: 'choices' }, el('label', { htmlFor: kindId }, say('ui.register.kind')), choose), fields, button, result));
}
