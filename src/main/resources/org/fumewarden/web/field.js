// One question with its answer, its unit, "unknown", the fault beside it, and why it is asked.

import { askJson } from './server.js';
import { el, fresh, invalid, ruleWords } from './dom.js';
import { numeral, say } from './words.js';
import { faultNodes } from './faults.js';
import { picker } from './picker.js';
import { equivalents, join, split, tidy } from './units.js';

const FEW = 5;
/** Sources that are our own: beside a question they would explain nothing. */
const OWN = ['fumewarden', 'practice'];

/** A number with a unit. Gives its node and how to set it; calls back with the words of the task file. */
export function amount(labelled, value, units, changed) {
  const parts = split(value === 'unknown' ? '' : value, units);
  const known = units.some(u => u.unit === parts.unit);
  const same = el('span', { className: 'same' });
  const number = el('input', {
    type: 'text', inputMode: 'decimal', autocomplete: 'off', className: 'amount', value: parts.number, maxLength: 40,
    'aria-labelledby': labelled.id, 'aria-describedby': labelled.describedBy, oninput: update, onchange: tidyUp,
  });
  const unit = el('select', { 'aria-label': `${say('ui.unit')}: ${labelled.words}`, className: 'unit', onchange: update },
    units.map(u => el('option', { value: u.unit, selected: u.unit === parts.unit }, u.unit)));
  if (!known && parts.unit) unit.append(el('option', { value: parts.unit, selected: true }, parts.unit));

  function others() {
    same.replaceChildren();
    for (const other of equivalents(number.value, unit.value, units)) {
      same.append(el('button', {
        type: 'button', className: 'quiet', title: say('ui.unit.use', other.unit),
        'aria-label': say('ui.unit.write', `${numeral(other.number)} ${other.unit}`),
        onclick: () => { number.value = other.number; unit.value = other.unit; update(); number.focus(); },
      }, `= ${numeral(other.number)} ${other.unit}`));
    }
  }
  function update() {
    others();
    changed(join(number.value, unit.value));
  }
  /** Once it is typed: "0,12 mg/m\u00B3" in one go becomes its number and its unit. */
  function tidyUp() {
    const tidied = tidy(number.value, unit.value, units);
    number.value = tidied.number;
    unit.value = tidied.unit;
    update();
  }
  others();
  const single = units.length === 1;
  return {
    node: el('span', { className: 'amounts' }, number,
      single ? (units[0].unit && el('span', { className: 'unit' }, units[0].unit)) : unit, same),
    clear() { number.value = ''; others(); },
    set(words) {
      const next = split(words, units);
      number.value = next.number;
      unit.value = next.unit;
      update();
    },
    input: number,
  };
}

function radios(labelled, options, value, changed) {
  const group = fresh('answers');
  const buttons = options.map(option => el('label', { className: 'choice' },
    el('input', {
      type: 'radio', name: group, value: option.id, checked: option.id === value, 'aria-describedby': labelled.describedBy,
      onchange: () => changed(option.id),
    }), el('span', { lang: option.lang }, option.name)));
  return { node: el('div', { className: 'choices', role: 'radiogroup', 'aria-labelledby': labelled.id }, buttons) };
}

function options(question) {
  const flags = question.kind === 'flag' ? [{ id: 'true', name: say('ui.yes') }, { id: 'false', name: say('ui.no') }] : question.choices;
  return [...flags, { id: 'unknown', name: say('ui.unknown') }];
}

function text(labelled, value, changed) {
  return { node: el('input', { type: 'text', value: value ?? '', maxLength: 200, 'aria-labelledby': labelled.id,
    'aria-describedby': labelled.describedBy, oninput: event => changed(event.target.value || undefined) }) };
}

/** The control of a question. */
function control(question, labelled, value, changed, unfolded) {
  if (question.kind === 'flag' || (question.choices.length > 0 && question.choices.length <= FEW)) {
    return radios(labelled, options(question), value, changed);
  }
  if (question.choices.length > 0) return picker(labelled, options(question), value, question.id, changed, unfolded);
  if (question.units.length === 0) return text(labelled, value, changed);
  const unknown = el('input', { type: 'checkbox', checked: value === 'unknown', onchange: () => {
    if (unknown.checked) number.clear();
    changed(unknown.checked ? 'unknown' : undefined);
  } });
  const number = amount(labelled, value, question.units, words => { unknown.checked = false; changed(words); });
  return { set: number.set, node: el('div', { className: 'choices' }, number.node,
    el('label', { className: 'choice' }, unknown, el('span', {}, say('ui.unknown')))) };
}

/** A row of the form. */
export function field(question, value, changed, unfolded) {
  const id = fresh('ask');
  const faultId = fresh('fault');
  const reasonId = fresh('why');
  const label = el('div', { className: 'ask', id, lang: question.translated ? undefined : 'en' }, question.ask);
  const fault = el('p', { className: 'fault', id: faultId });
  const reason = el('div', { className: 'asked', id: reasonId });
  const about = { id, words: question.ask, describedBy: `${faultId} ${reasonId}` };
  const place = el('div', { className: 'control' });
  let made = control(question, about, value, changed, unfolded);
  place.append(made.node);
  const node = el('div', { className: 'row', 'data-path': question.path }, label, el('div', { className: 'answer' }, place, fault, reason));

  /** Puts a suggestion in, in the control as well. */
  function set(words) {
    changed(words);
    made = control(question, about, words, changed);
    place.replaceChildren(made.node);
    node.querySelector('input, button, select')?.focus();
  }
  return {
    node,
    question,
    long: question.choices.length > FEW,
    unfold() { made.unfold?.(); },
    focus() { (node.querySelector('input:checked') ?? node.querySelector('input, button, select'))?.focus(); },
    setFault(problem) {
      fault.replaceChildren(...(problem ? faultNodes(problem, set, words => options(question).find(o => o.id === words)?.name ?? words) : []).filter(Boolean));
      node.classList.toggle('wrong', Boolean(problem));
      node.querySelectorAll('.control input').forEach(input => invalid(input, Boolean(problem)));
    },
    setReasons(reasons) {
      node.classList.toggle('open', reasons.length > 0);
      reason.replaceChildren(...(reasons.length === 0 ? [] : [
        el('span', { className: 'tag' }, say('ui.needed')), ' ', ruleWords('span', reasons[0].says, undefined, reasons[0].own),
        !OWN.includes(reasons[0].source) && el('span', { className: 'cite' }, ` ${reasons[0].source}, ${reasons[0].clause}`)].filter(Boolean)));
    },
  };
}

/** The words of the tables for what somebody typed, as the server reads them. */
export async function spelled(task) {
  return (await askJson('api/spelled', { task }, true)).task;
}
