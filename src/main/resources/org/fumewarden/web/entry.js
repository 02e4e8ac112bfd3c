// One entry about one item: the kind decides the fields; what is wrong stands beside its field; what is typed is kept until written.

import { el, fresh, invalid } from './dom.js';
import { remember, remembered } from './state.js';
import { has, say } from './words.js';

const LONG = new Set(['remarks', 'condition', 'defects', 'action', 'exercises', 'content', 'work', 'reason', 'follow-up', 'others', 'limits', 'operating-conditions', 'intended-performance', 'methods', 'particulars', 'exposure-history']);
const UNITS = { flow: 'L/min', 'minimum-flow': 'L/min', 'cylinder-pressure': 'bar', 'cylinder-full-pressure': 'bar', oxygen: '%', 'carbon-monoxide': 'ppm', 'carbon-dioxide': 'ppm', oil: 'mg/m3' };

function row(name, needed, make) {
  const id = fresh('log');
  const faultId = fresh('fault');
  const made = make(id, faultId);
  const words = [say(`entry.${name}`) + (UNITS[name] ? `, ${UNITS[name]}` : ''), needed && el('span', { className: 'cite' }, ` ${say('ui.upkeep.needed')}`)];
  const fault = el('p', { className: 'fault', id: faultId });
  const ask = made.group ? el('div', { className: 'ask', id }, words) : el('label', { className: 'ask', htmlFor: id }, words);
  const target = made.input ?? made.node;
  return { name, node: el('div', { className: 'row', 'data-name': name }, ask, el('div', { className: 'answer' }, made.node, fault)), value: made.value,
    setFault(text) {
      fault.textContent = text;
      fault.closest('.row').classList.toggle('wrong', Boolean(text));
      invalid(target, Boolean(text));
    },
    focus() { target.focus(); } };
}

export function textField(name, value, changed, type) {
  return (id, faultId) => {
    const long = type === undefined && LONG.has(name);
    const box = el(long ? 'textarea' : 'input', { id, value, maxLength: 2000, autocomplete: 'off', 'aria-describedby': faultId, oninput: changed, ...(long ? { rows: 2 } : { type: type ?? 'text' }) });
    return { node: box, value: () => box.value };
  };
}

export function choiceField(options, value, changed) {
  return (id, faultId) => {
    const group = fresh('choice');
    const boxes = options.map(([key, words]) => ({ key, words, box: el('input', { type: 'radio', name: group, value: key, checked: key === value, 'aria-describedby': faultId, onchange: changed }) }));
    return { group: true, input: boxes[0].box, node: el('div', { className: 'choices', role: 'radiogroup', 'aria-labelledby': id }, boxes.map(b => el('label', { className: 'choice' }, b.box, el('span', {}, b.words)))),
      value: () => boxes.find(b => b.box.checked)?.key ?? '' };
  };
}

/** A row for a field of a form, by its kind. */
export function fieldRow(field, value, changed) {
  const plain = {
    result: choiceField(['passed', 'failed'].map(r => [r, say(`result.${r}`)]), value, changed),
    'yes-or-no': choiceField([['yes', say('ui.yes')], ['no', say('ui.no')]], value, changed),
    day: textField(field.name, value, changed, 'date'),
  };
  return row(field.name, field.needed || field.kind === 'result', plain[field.kind] ?? textField(field.name, value, changed));
}

/** The fields that an entry of this kind about this item asks for. */
export function entryForm(item, kind, today, given, send) {
  const key = `entry.${item.id}.${kind.id}`;
  const kept = given.corrects ? null : remembered(key);
  const values = { ...given.values, ...kept?.values };
  const rows = [];
  const store = () => {
    if (!given.corrects) remember(key, { on: on.value(), values: Object.fromEntries(rows.map(r => [r.name, r.value()])) });
  };
  const on = row('on', true, textField('on', kept?.on ?? given.on ?? today, store, 'date'));
  const asked = kind.fields.filter(f => f.kind !== 'points' && (f.concerns.length === 0 || f.concerns.includes(item.kind) || values[f.name]));
  for (const f of asked) rows.push(fieldRow(f, values[f.name] ?? '', store));
  const because = given.corrects && row('corrects-because', true, textField('corrects-because', '', () => {}));
  const needed = rows.filter((r, i) => asked[i].needed || asked[i].kind === 'result' || r.name === 'flow' || values[r.name]);
  const rest = rows.filter(r => !needed.includes(r));
  const result = el('div', { role: 'alert' });
  const button = el('button', { type: 'submit', className: 'large' }, say('ui.upkeep.write'));
  const form = el('form', { noValidate: true, onsubmit: event => { event.preventDefault(); submit(false); } },
    on.node, because && because.node, needed.map(r => r.node),
    rest.length > 0 && el('details', { className: 'more', open: rest.some(r => r.value()) }, el('summary', {}, `${say('ui.more')} (${rest.length})`), rest.map(r => r.node)), button, result);

  async function submit(sure) {
    store();
    button.disabled = true;
    const every = [on, ...rows, ...(because ? [because] : [])];
    every.forEach(r => r.setFault(''));
    result.replaceChildren();
    const problems = await send({ kind: kind.id, on: on.value(), values: Object.fromEntries(rows.map(r => [r.name, r.value()])), corrects: given.corrects ?? '',
      'corrects-because': because ? because.value() : '', sure });
    button.disabled = false;
    if (problems.length === 0) {
      remember(key, null);
      return;
    }
    show(problems, every, result, () => submit(true));
  }
  return { node: form, focus: () => (needed[0] ?? on).focus() };
}

/** Faults beside their fields; what a second word settles gets a button for it. */
export function show(problems, rows, result, sure) {
  for (const problem of problems) {
    const target = rows.find(r => r.name === problem.field);
    if (target) {
      target.setFault(entryFault(problem));
      target.focus();
    } else {
      result.append(el('p', { className: 'fault' }, entryFault(problem)), problem.field === 'sure' ? el('button', { type: 'button', className: 'quiet', onclick: sure }, say('ui.upkeep.sure')) : '');
    }
  }
}

/** What is wrong with an entry, in a sentence of the page. */
export function entryFault(problem) {
  if (problem.said) return problem.said;
  const known = `ui.entry.${problem.fault}`;
  return has(known) ? say(known) : document.documentElement.lang === 'en' ? problem.message : say('ui.entry.choice');
}
