// One entry of the log: the kind decides the fields; what is wrong is said beside its field; what is typed is kept until it is written.

import { askJson, Problems, tell } from './server.js';
import { el, fresh } from './dom.js';
import { remember, remembered, state } from './state.js';
import { say } from './words.js';

const LONG = new Set(['remarks', 'condition', 'defects', 'action', 'exercises', 'content', 'work', 'reason', 'follow-up', 'others', 'limits', 'operating-conditions', 'intended-performance', 'methods', 'particulars', 'exposure-history']);
const UNITS = { flow: 'L/min', 'minimum-flow': 'L/min', 'cylinder-pressure': 'bar', 'cylinder-full-pressure': 'bar', oxygen: '%', 'carbon-monoxide': 'ppm', 'carbon-dioxide': 'ppm', oil: 'mg/m3' };

function row(name, needed, make) {
  const id = fresh('log');
  const faultId = fresh('fault');
  const made = make(id, faultId);
  const label = say(`entry.${name}`) + (UNITS[name] ? `, ${UNITS[name]}` : '');
  const fault = el('p', { className: 'fault', id: faultId });
  const words = [label, needed && el('span', { className: 'cite' }, ` ${say('ui.upkeep.needed')}`)];
  const ask = made.group ? el('div', { className: 'ask', id }, words) : el('label', { className: 'ask', htmlFor: id }, words);
  const node = el('div', { className: 'row' }, ask, el('div', { className: 'answer' }, made.node, fault));
  return { name, node, value: made.value, setFault(text) { fault.textContent = text; node.classList.toggle('wrong', Boolean(text)); made.node.querySelector?.('input'); (made.input ?? made.node).setAttribute('aria-invalid', String(Boolean(text))); },
    focus() { (made.input ?? made.node).focus(); } };
}

function textField(name, value, changed, type) {
  return (id, faultId) => {
    const tag = type === undefined && LONG.has(name) ? 'textarea' : 'input';
    const box = el(tag, { id, value, maxLength: 2000, autocomplete: 'off', 'aria-describedby': faultId, oninput: changed, ...(tag === 'input' ? { type: type ?? 'text' } : { rows: 2 }) });
    return { node: box, value: () => box.value };
  };
}

function choiceField(options, value, changed) {
  return (id, faultId) => {
    const group = fresh('choice');
    const boxes = options.map(([key, words]) => ({ key, words, box: el('input', { type: 'radio', name: group, value: key, checked: key === value, 'aria-describedby': faultId, onchange: changed }) }));
    return { group: true, input: boxes[0].box, node: el('div', { className: 'choices', role: 'radiogroup', 'aria-labelledby': id }, boxes.map(b => el('label', { className: 'choice' }, b.box, el('span', {}, b.words)))),
      value: () => boxes.find(b => b.box.checked)?.key ?? '' };
  };
}

/** The checks of the unit's card, each passed, failed or left out, as the words of the log. */
function pointsField(checks, value, changed) {
  return id => {
    const kept = new Map(value.split(';').map(p => p.trim().split(':')).filter(p => p.length > 1).map(p => [p[0], p[1].trim()]));
    const lines = checks.map(c => {
      const name = fresh('point');
      const boxes = ['passed', 'failed'].map(key => ({ key, box: el('input', { type: 'radio', name, value: key, checked: kept.get(c.id) === key, onchange: changed }) }));
      return { c, boxes, node: el('div', { className: 'point', role: 'radiogroup', 'aria-label': c.name }, el('span', { lang: 'en' }, c.name, c.unverified && ` \u25B3 ${say('sheet.unverified')}`),
        el('span', { className: 'choices' }, boxes.map(b => el('label', { className: 'choice' }, b.box, el('span', {}, say(`result.${b.key}`)))))) };
    });
    return { group: true, input: lines[0]?.boxes[0].box, node: el('div', { role: 'group', 'aria-labelledby': id }, lines.length === 0 ? el('p', { className: 'hint' }, say('ui.upkeep.points.unit')) : lines.map(l => l.node)),
      value: () => lines.map(l => [l.c.id, l.boxes.find(b => b.box.checked)?.key]).filter(l => l[1]).map(l => l.join(': ')).join('; ') };
  };
}

function fieldRow(field, values, checks, changed) {
  const value = values[field.name] ?? '';
  const plain = {
    result: choiceField(['passed', 'failed'].map(r => [r, say(`result.${r}`)]), value, changed),
    'yes-or-no': choiceField([['yes', say('ui.yes')], ['no', say('ui.no')]], value, changed),
    day: textField(field.name, value, changed, 'date'),
    points: pointsField(checks, value, changed),
  };
  return row(field.name, field.needed || field.kind === 'result', plain[field.kind] ?? textField(field.name, value, changed));
}

function deedValues(kind, rest) {
  if (kind === 'fit-test') return { model: rest };
  return rest ? { topic: rest } : {};
}

/** The form; gives its node and ways to fill it from a thing that is owed or an entry to correct. */
export function logForm(told, written) {
  const kept = remembered('log') ?? {};
  let draft = { kind: 'before-use-check', item: told.items[0]?.id ?? '', on: told.today, by: remembered('by') ?? '', values: {}, ...kept };
  const fields = el('div', {});
  const result = el('div', { role: 'status' });
  const head = el('h3', { tabIndex: -1 }, say('ui.upkeep.log'));
  const button = el('button', { type: 'submit' }, say('ui.upkeep.write'));
  let rows = [];

  function store() {
    draft = { ...draft, ...Object.fromEntries(rows.filter(r => r.own).map(r => [r.name, r.value()])), values: { ...draft.values, ...Object.fromEntries(rows.filter(r => !r.own).map(r => [r.name, r.value()])) } };
    remember('log', draft);
  }
  const own = made => ({ ...made, own: true });
  function select(options, value, changed) {
    return (id, faultId) => {
      const box = el('select', { id, 'aria-describedby': faultId, onchange: changed }, options.map(([key, words]) => el('option', { value: key, selected: key === value }, words)));
      return { node: box, value: () => box.value };
    };
  }
  function again(name) {
    store();
    draw();
    rows.find(r => r.name === name).focus();
  }
  function draw() {
    const kind = told.kinds.find(k => k.id === draft.kind) ?? told.kinds[0];
    const about = told.items.find(i => i.id === draft.item);
    const checks = about?.checks ?? [];
    const asked = kind.fields.filter(f => f.concerns.length === 0 || f.concerns.includes(about?.kind) || draft.values[f.name]);
    rows = [
      own(row('kind', true, select(told.kinds.map(k => [k.id, say(`deed.${k.id}`)]), kind.id, () => again('kind')))),
      own(row('item', true, select(told.items.map(i => [i.id, `${i.id}: ${i.label}`]), draft.item, () => again('item')))),
      own(row('on', true, textField('on', draft.on, store, 'date'))),
      own(row('by', true, textField('by', draft.by, store))),
      ...(draft.corrects ? [own(row('corrects', true, textField('corrects', draft.corrects, store))), own(row('corrects-because', true, textField('corrects-because', draft['corrects-because'] ?? '', store)))] : []),
      ...asked.map(f => fieldRow(f, draft.values, checks, store))];
    fields.replaceChildren(...rows.map(r => r.node));
  }
  function start(next) {
    draft = { on: told.today, by: draft.by, values: {}, ...next };
    remember('log', draft);
    draw();
    result.replaceChildren();
    head.focus();
    head.scrollIntoView();
  }
  function prefill(item, deed) {
    const [kind, ...rest] = deed.split('/');
    const known = told.kinds.some(k => k.id === kind);
    start({ item, kind: known ? kind : 'performed', values: known ? deedValues(kind, rest.join('/')) : { task: deed } });
  }
  function correct(entry) {
    const kind = entry.deed.split('/')[0];
    const values = Object.fromEntries(entry.parts.map(p => [p.name, { true: 'yes', false: 'no' }[p.value] ?? p.value]));
    start({ item: entry.item, kind: told.kinds.some(k => k.id === kind) ? kind : 'performed', on: entry.on, values, corrects: String(entry.sequence) });
  }
  function showFaults(problems) {
    rows.forEach(r => r.setFault(''));
    const rest = problems.filter(p => !rows.some(r => r.name === p.field));
    problems.forEach(p => rows.find(r => r.name === p.field)?.setFault(`${p.message} ${say('ui.maybe', p.maybe)}`));
    result.replaceChildren(...rest.map(p => el('p', { className: 'fault' }, `${p.field} ${p.message} ${say('ui.maybe', p.maybe)}`)));
    rows.find(r => problems.some(p => p.field === r.name))?.focus();
  }
  async function write(event) {
    event.preventDefault();
    store();
    button.disabled = true;
    try {
      const entry = await askJson('api/log', { ...draft, code: state.task.code });
      remember('by', draft.by);
      remember('log', null);
      tell(`${say('ui.upkeep.written', entry.sequence, entry.item, say(`result.${entry.result}`))} ${entry.says ?? ''} ${entry.because ? `${say('ui.upkeep.now.closed')} ${entry.because}` : ''}`);
      written('form select');
    } catch (fault) {
      if (fault instanceof Problems) showFaults(fault.problems);
      else result.replaceChildren(el('p', { className: 'fault' }, say('ui.upkeep.unsure')));
    } finally {
      button.disabled = false;
    }
  }
  draw();
  const node = el('section', {}, head, el('p', { className: 'hint' }, say('ui.upkeep.log.hint')),
    told.items.length === 0 ? el('p', {}, say('ui.upkeep.none.first')) : el('form', { noValidate: true, onsubmit: write }, fields, button, ' ',
      el('button', { type: 'button', className: 'quiet', onclick: () => start({ kind: 'before-use-check', item: draft.item }) }, say('ui.upkeep.clear')), result));
  return { node, prefill, correct };
}
