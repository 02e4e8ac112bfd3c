// The answer as a plate: the state in a boxed word of its own form, then what is needed, what to wear, and the unit with its condition.

import { el } from './dom.js';
import { name, state } from './state.js';
import { has, numeral, say } from './words.js';

/** The short form of an advice: the same names that a comparison gives for its two sides. */
export function brief(advice) {
  const best = advice.respirators.find(r => r.verdict === 'recommended');
  return {
    title: advice.title, code: advice.code, 'code-name': advice.codes[0].name, on: advice.on, status: advice.status,
    factor: String(advice['required-factor'].value), 'factor-open': advice['required-factor'].open,
    agent: advice['required-factor'].agent, basis: advice['required-factor'].basis, without: advice['required-factor']['without-limit'],
    wear: best?.name ?? '', class: best?.class ?? '', filter: best?.filter ?? '', questions: advice.questions.length,
    unit: advice.unit?.id ?? '', 'unit-condition': advice.unit?.condition ?? '',
    'wear-unverified': best?.reasons.some(r => r.unverified) ?? false,
    unverified: advice['required-factor'].reasons.some(r => r.unverified),
  };
}

/** The id of a class as it is written on paper: TH3, full mask P3. */
export function classWords(id) {
  return id.replaceAll('-', ' ').replace(/\b(th|tm|ffp|p|n)(?=\d)/g, mark => mark.toUpperCase());
}

/** The name of a class in the words of the page. */
export function deviceWords(id) {
  return has(`device.${id}`) ? say(`device.${id}`) : state.advice?.respirators.find(r => r.class === id)?.name ?? classWords(id);
}

/** A filter, or that there is none. */
export function filterWords(filter) {
  return filter.startsWith('none') ? say('wear.no-filter') : say('wear.filter', filter);
}

/** The state in one sentence. */
export function stateWords(b) {
  return b.status === 'incomplete' && b.questions === 0 ? say('state.no-class') : say(`state.${b.status}`, b.questions);
}

/** Two figures, rounded up, as on paper. */
export function figure(text) {
  const number = Number(text);
  if (Number.isInteger(number)) return text;
  const step = 10 ** (Math.floor(Math.log10(number)) - 1);
  return numeral(String(Number((Math.ceil(number / step - 1e-9) * step).toPrecision(2))));
}

export function factorWords(b) {
  const open = b['factor-open'] ? ` ${say('factor.open')}` : '';
  if (b.basis === 'none' && !open) return say('factor.nothing');
  return Number(b.factor) > 1 ? `${figure(b.factor)} (${name(b.agent)}).${open}` : say(open ? 'factor.none.open' : 'factor.none');
}

function withoutWords(b) {
  return b.without?.length ? el('span', { className: 'without' }, say('sheet.factor.without', b.without.map(name).join('; '))) : '';
}

function cell(key, words, className) {
  return el('div', { className: `cell ${className ?? ''}` }, el('dt', {}, say(`plate.${key}`)), el('dd', {}, words));
}

function mark(unverified) {
  return unverified ? [' ', el('strong', { className: 'unverified' }, `\u25B3 ${say('sheet.unverified')}`)] : '';
}

function wearWords(b) {
  if (b.status === 'do-not-enter') return say('wear.stay-out');
  if (b.wear !== '') return b.wear;
  return say(b.status === 'complete' ? 'ui.wear.none' : 'wear.nothing-cleared');
}

function unitWords(b) {
  return `${b.unit ? say('wear.unit', b.unit) : say('wear.this-unit')}: ${say(`ui.unit.${b['unit-condition']}`)}`;
}

/** A plate. */
export function plate(b, caption, small) {
  const translated = has(`device.${b.class}`) ? say(`device.${b.class}`) : wearWords(b);
  return el('div', { className: `plate ${b.status}${small ? ' small' : ''}`, role: 'group', 'aria-label': caption },
    el('p', { className: 'caption' }, caption),
    el('p', { className: 'state' }, el('strong', { className: 'word' }, say(`state.${b.status}.word`)), ' ', stateWords(b)),
    el('dl', {},
      cell('factor', [factorWords(b), mark(b.unverified), withoutWords(b)]),
      cell('wear', [translated, mark(b['wear-unverified'])]),
      b.filter && b.status !== 'do-not-enter' && cell('filter', b.filter.startsWith('none') ? say('wear.no-filter') : b.filter),
      b['unit-condition'] && cell('unit', unitWords(b), `unit ${b['unit-condition']}`)));
}
