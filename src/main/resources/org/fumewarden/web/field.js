// One question with its answer, its unit, "unknown", the fault beside it, and why it is asked.

import { el, fresh, ruleWords } from './dom.js';
import { say } from './words.js';
import { equivalents, join, split } from './units.js';

const FEW = 4;

/** A number with a unit. Gives its node and how to set it; calls back with the words of the task file. */
export function amount(labelled, value, units, changed) {
  const parts = split(value === 'unknown' ? '' : value, units);
  const known = units.some(u => u.unit === parts.unit);
  const same = el('span', { className: 'same' });
  const number = el('input', {
    type: 'text', inputMode: 'decimal', autocomplete: 'off', className: 'amount', value: parts.number, maxLength: 40,
    'aria-labelledby': labelled.id, 'aria-describedby': labelled.describedBy, oninput: update,
  });
  const unit = el('select', { 'aria-label': `${say('ui.unit')}: ${labelled.words}`, className: 'unit', onchange: update },
    units.map(u => el('option', { value: u.unit, selected: u.unit === parts.unit }, u.unit)));
  if (!known && parts.unit) unit.append(el('option', { value: parts.unit, selected: true }, parts.unit));

  function others() {
    same.replaceChildren();
    for (const other of equivalents(number.value, unit.value, units)) {
      same.append(el('button', {
        type: 'button', className: 'quiet', title: say('ui.unit.use', other.unit),
        'aria-label': say('ui.unit.write', `${other.number} ${other.unit}`),
        onclick: () => { number.value = other.number; unit.value = other.unit; update(); number.focus(); },
      }, `= ${other.number} ${other.unit}`));
    }
  }
  function update() {
    others();
    changed(join(number.value, unit.value));
  }
  others();
  const single = units.length === 1;
  return {
    node: el('span', { className: 'amounts' }, number,
      single ? (units[0].unit && el('span', { className: 'unit' }, units[0].unit)) : unit, same),
    clear() { number.value = ''; others(); },
    input: number,
  };
}

function radios(labelled, options, value, changed) {
  const group = fresh('answers');
  const buttons = options.map(option => el('label', { className: 'choice' },
    el('input', {
      type: 'radio', name: group, value: option.id, checked: option.id === value,
      onchange: () => changed(option.id),
    }), el('span', { lang: option.lang }, option.name)));
  return { node: el('div', { className: 'choices', role: 'radiogroup', 'aria-labelledby': labelled.id, 'aria-describedby': labelled.describedBy }, buttons) };
}

function select(labelled, options, value, changed) {
  const blank = options.some(o => o.id === value) ? [] : [el('option', { value: '', selected: true }, say('ui.choose'))];
  return {
    node: el('select', {
      'aria-labelledby': labelled.id, 'aria-describedby': labelled.describedBy,
      onchange: event => changed(event.target.value || undefined),
    }, blank, options.map(o => el('option', { value: o.id, selected: o.id === value, lang: o.lang }, o.name))),
  };
}

function options(question) {
  const flags = question.kind === 'flag' ? [{ id: 'true', name: say('ui.yes') }, { id: 'false', name: say('ui.no') }] : question.choices;
  return [...flags, { id: 'unknown', name: say('ui.unknown') }];
}

/** The control of a question. */
function control(question, labelled, value, changed) {
  if (question.kind === 'flag' || (question.choices.length > 0 && question.choices.length <= FEW)) {
    return radios(labelled, options(question), value, changed);
  }
  if (question.choices.length > 0) return select(labelled, options(question), value, changed);
  if (question.units.length === 0) {
    return { node: el('input', { type: 'text', value: value ?? '', maxLength: 200, 'aria-labelledby': labelled.id,
      'aria-describedby': labelled.describedBy, oninput: event => changed(event.target.value || undefined) }) };
  }
  const unknown = el('input', { type: 'checkbox', checked: value === 'unknown', onchange: () => {
    if (unknown.checked) number.clear();
    changed(unknown.checked ? 'unknown' : undefined);
  } });
  const number = amount(labelled, value, question.units, words => { unknown.checked = false; changed(words); });
  return { node: el('div', { className: 'choices' }, number.node,
    el('label', { className: 'choice' }, unknown, el('span', {}, say('ui.unknown')))) };
}

/** A row of the form. */
export function field(question, value, changed) {
  const id = fresh('ask');
  const faultId = fresh('fault');
  const reasonId = fresh('why');
  const label = el('div', { className: 'ask', id, lang: question.translated ? undefined : 'en' }, question.ask);
  const fault = el('p', { className: 'fault', id: faultId });
  const reason = el('div', { className: 'asked', id: reasonId });
  const made = control(question, { id, words: question.ask, describedBy: `${faultId} ${reasonId}` }, value, changed);
  const node = el('div', { className: 'row', 'data-path': question.path }, label, el('div', { className: 'answer' }, made.node, fault, reason));
  return {
    node,
    question,
    setFault(problem) {
      fault.textContent = problem ? `${problem.message} ${say('ui.maybe', problem.maybe)}` : '';
      node.classList.toggle('wrong', Boolean(problem));
    },
    setReasons(reasons) {
      node.classList.toggle('open', reasons.length > 0);
      reason.replaceChildren(...(reasons.length === 0 ? [] : [
        el('span', { className: 'tag' }, say('ui.needed')), ' ', ruleWords('span', reasons[0].says),
        el('span', { className: 'cite' }, ` ${reasons[0].rule} ${reasons[0].source}, ${reasons[0].clause}`)]));
    },
  };
}
