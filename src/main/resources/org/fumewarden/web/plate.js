// The answer as a rating plate: four facts, riveted on, the state in words and with a sign.

import { el } from './dom.js';
import { name } from './state.js';
import { say } from './words.js';

const SIGNS = { complete: '\u25CF', incomplete: '\u25D0', conflict: '\u21AF', 'do-not-enter': '\u2715' };

/** The short form of an advice: the same names that a comparison gives for its two sides. */
export function brief(advice) {
  const best = advice.respirators.find(r => r.verdict === 'recommended');
  return {
    title: advice.title, code: advice.code, 'code-name': advice.codes[0].name, on: advice.on, status: advice.status,
    factor: String(advice['required-factor'].value), 'factor-open': advice['required-factor'].open,
    agent: advice['required-factor'].agent, basis: advice['required-factor'].basis, without: advice['required-factor']['without-limit'], wear: best?.name ?? '', class: best?.class ?? '', filter: best?.filter ?? '',
    questions: advice.questions.length,
    'wear-unverified': best?.reasons.some(r => r.unverified) ?? false,
    unverified: advice['required-factor'].reasons.some(r => r.unverified),
  };
}

function factorWords(b) {
  const open = b['factor-open'] ? ` ${say('sheet.factor.open')}` : '';
  if (b.basis === 'none' && !open) {
    return say('sheet.factor.nothing');
  }
  return Number(b.factor) > 1 ? `${b.factor} (${name(b.agent)})${open}` : say(open ? 'sheet.factor.none.open' : 'sheet.factor.none') + open;
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

/** A plate. */
export function plate(b, caption, small) {
  const state = `${SIGNS[b.status]} ${say(`status.${b.status}`)}${b.questions ? ` (${say('ui.open.count', b.questions)})` : ''}`;
  const wear = b.wear === '' ? say(b.status === 'complete' ? 'sheet.wear.none' : 'ui.wear.nothing') : b.wear;
  return el('div', { className: `plate ${b.status}${small ? ' small' : ''}`, role: 'group', 'aria-label': caption },
    el('p', { className: 'caption' }, caption),
    el('dl', {},
      cell('status', state, 'state'),
      cell('factor', [factorWords(b), mark(b.unverified), withoutWords(b)]),
      cell('wear', [wear, mark(b['wear-unverified'])]),
      b.filter && cell('filter', b.filter)));
}
