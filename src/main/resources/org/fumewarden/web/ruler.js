// The rungs: every class at the factor it is given, and the line of the factor that is needed.

import { el } from './dom.js';
import { deviceWords, figure } from './plate.js';
import { say } from './words.js';

export const SIGNS = { recommended: '\u25CF', suitable: '\u25CB', undecided: '?', barred: '\u2715' };

function rung(factor, classes) {
  return el('li', { className: 'rung' },
    el('span', { className: 'step' }, factor === null ? say('ui.rung.none') : factor),
    el('ul', { className: 'chips' }, classes.map(c => el('li', { className: `chip ${c.verdict}` },
      el('span', { 'aria-hidden': 'true' }, SIGNS[c.verdict]), ` ${deviceWords(c.class)}`,
      el('span', { className: 'unseen' }, `, ${say(`verdict.${c.verdict}`)}`)))));
}

export function ruler(advice) {
  const groups = new Map();
  for (const r of advice.respirators) {
    const key = r.factor === null ? -1 : Number(r.factor);
    groups.set(key, [...(groups.get(key) ?? []), r]);
  }
  const needed = Number(advice['required-factor'].value);
  const steps = [...groups.keys()].sort((a, b) => b - a);
  const items = [];
  let drawn = false;
  for (const step of steps) {
    if (!drawn && step < needed) {
      items.push(line(needed, advice));
      drawn = true;
    }
    items.push(rung(step < 0 ? null : String(step), groups.get(step)));
  }
  if (!drawn && needed > 1) items.push(line(needed, advice));
  return el('div', {}, el('p', { className: 'hint' }, say('ui.rung.hint')), el('ol', { className: 'rungs' }, items),
    el('p', { className: 'hint' }, Object.keys(SIGNS).map(v => `${SIGNS[v]} ${say(`verdict.${v}`)}`).join('   ')));
}

function line(needed, advice) {
  return el('li', { className: 'needed' }, say('ui.rung.needed', figure(String(needed))), advice['required-factor'].open ? ` ${say('sheet.factor.open')}` : '');
}
